interface ImportMeta {
	/** Vite's: a loader for every file that fits the pattern, by path. */
	glob<Module>(
		pattern: string | readonly string[],
		options?: { readonly query: string }
	): Readonly<Record<string, () => Promise<Module>>>;
}
