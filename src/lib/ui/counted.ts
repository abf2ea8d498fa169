/** A number of things, with the word for one or for several: `1 task`, `1,414 tasks`. */
export function counted(count: number, one: string, several = `${one}s`): string {
	return `${grouped(count)} ${count === 1 ? one : several}`;
}

/** A whole number with its thousands apart: `1,414`. The browser's own takes long to come the first time. */
export function grouped(count: number): string {
	return String(count).replace(/\B(?=(?:\d{3})+$)/g, ',');
}
