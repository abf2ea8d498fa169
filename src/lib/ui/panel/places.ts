/** Key of a hole for its ticks: numbers of holes move when the panel is changed. */
export function placeKey({ x, y }: { readonly x: number; readonly y: number }): string {
	return `${x.toFixed(3)} ${y.toFixed(3)}`;
}
