/** A number of things, with the word for one or for several: `1 task`, `1,414 tasks`. */
export function counted(count: number, one: string, several = `${one}s`): string {
	return `${count.toLocaleString('en-GB')} ${count === 1 ? one : several}`;
}
