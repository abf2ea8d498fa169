/** The members in an order of chance; `below` gives a whole number from 0 to under its argument. */
export function shuffled<T>(members: readonly T[], below: (limit: number) => number): T[] {
	const left = [...members];
	return members.flatMap(() => left.splice(below(left.length), 1));
}
