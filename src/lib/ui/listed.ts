/** Things in a sentence: `4`, `4 and 10`, `4, 10 and 12`. */
export function listed(things: readonly (string | number)[]): string {
	const before = things.slice(0, -1).join(', ');
	return `${before}${before === '' ? '' : ' and '}${things.at(-1) ?? ''}`;
}
