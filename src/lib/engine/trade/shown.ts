import type { Part } from '../solver/trade-function.ts';

/*
 * How functions look in displayed mathematics: each of these takes the displayed forms of what a
 * function is given.
 */

type Shown = readonly (readonly Part[])[];

/** Words in a formula. Plain blanks at their ends would be dropped, so they are made to stay. */
export function text(words: string): string {
	return words === '' ? '' : `<mtext>${words.replace(/^ | $/g, '\u00a0')}</mtext>`;
}

export function wordsAround(before: string, ...after: string[]) {
	return (shown: Shown): Part[] =>
		shown.flatMap((part, i) => [i === 0 ? text(before) : text(after[i - 1] ?? ''), ...part]);
}

/** A list written out with a sign between its members. */
export function joined(sign: string) {
	return ([list = []]: Shown): Part[] =>
		list.map((part) => (typeof part === 'string' ? part : { ...part, join: sign }));
}

/** `name (a, b)` */
export function named(name: string) {
	return (shown: Shown): Part[] => [
		`<mtext>${name}\u00a0</mtext><mrow><mo>(</mo>`,
		...shown.flatMap((part, i) => (i === 0 ? part : ['<mo>,</mo>', ...part])),
		'<mo>)</mo></mrow>'
	];
}

/** Rounds to a whole number of steps; a step of 1 is not worth showing. */
export function towards(direction: string) {
	return ([value = [], size = []]: Shown): Part[] => {
		const whole = size.length === 1 && size[0] === '<mn>1</mn>';
		const end = whole
			? [text(`whole number ${direction}`)]
			: [text(`${direction} to a full `), ...size];
		return [...value, '<mo>→</mo>', ...end];
	};
}
