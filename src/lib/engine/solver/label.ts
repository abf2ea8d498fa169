/** A label without what explains it behind a colon: `Grip` of `Grip: everything the rivet passes through`. */
export function shortLabel(label: string): string {
	return label.replace(/:.*/, '');
}
