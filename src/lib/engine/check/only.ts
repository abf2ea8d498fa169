/** What a record holds under these keys; keys that it does not hold are left out. */
export function only<T>(
	keys: readonly string[],
	from: Readonly<Record<string, T | undefined>>
): Record<string, T> {
	return Object.fromEntries(
		keys.flatMap((key): [string, T][] => {
			const value = from[key];
			return value === undefined ? [] : [[key, value]];
		})
	);
}
