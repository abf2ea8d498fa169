/* Read by the build as one, so that what the files share is read once. */

/** What every file of methods, pieces and checks exports, by its path from here. */
export const files = import.meta.glob<Readonly<Record<string, unknown>>>('./methods/**/*.ts', {
	eager: true
});
