interface ImportMeta {
	/** Vite's: every file that fits the pattern, loaded, by path. */
	glob<Module>(
		pattern: string | readonly string[],
		options: { readonly eager: true }
	): Readonly<Record<string, Module>>;
}
