import type { Part, TradeFunction } from '../solver/trade-function.ts';
import { densityOf } from './densities.ts';
import { leastRadius } from './least-radius.ts';
import { headNumber, lettersOf, rivetNumber } from './rivet-code.ts';
import { finalDrill, pilotDrill } from './rivet-drills.ts';

/*
 * Every function that a formula of a method may call, in one place. Values are plain numbers in
 * base units (inch, degree, pound).
 */

/** Quotients within this of a whole number are that number: 0.125 + 0.1875 is 5/16 exactly. */
const slack = 1e-9;

function wordsAround(before: string, ...after: string[]) {
	return (shown: readonly (readonly Part[])[]): Part[] =>
		shown.flatMap((part, i) => [i === 0 ? text(before) : text(after[i - 1] ?? ''), ...part]);
}

function text(words: string): string {
	return words === '' ? '' : `<mtext>${words}</mtext>`;
}

/** A list written out with a sign between its members. */
function joined(sign: string) {
	return ([list = []]: readonly (readonly Part[])[]): Part[] =>
		list.map((part) => (typeof part === 'string' ? part : { ...part, join: sign }));
}

function named(name: string) {
	return (shown: readonly (readonly Part[])[]): Part[] => [
		`<mtext>${name}</mtext><mrow><mo>(</mo>`,
		...shown.flatMap((part, i) => (i === 0 ? part : ['<mo>,</mo>', ...part])),
		'<mo>)</mo></mrow>'
	];
}

const arrow = '<mo>→</mo>';

/** Rounds to a whole number of steps; a step of 1 is not worth showing. */
function towards(direction: string) {
	return ([value = [], size = []]: readonly (readonly Part[])[]): Part[] => {
		const whole = size.length === 1 && size[0] === '<mn>1</mn>';
		const end = whole ? [text(`whole number ${direction}`)] : [text(`${direction} to a full `), ...size];
		return [...value, arrow, ...end];
	};
}

export const functions = {
	sum: {
		takes: ['a[]'],
		gives: 'a',
		run: (list: readonly number[]) => list.reduce((total, one) => total + one, 0),
		show: joined('+')
	},
	max: {
		takes: ['a', 'a...'],
		gives: 'a',
		run: (...values: number[]) => Math.max(...values),
		show: wordsAround('the larger of ', ' and ')
	},
	largest: {
		takes: ['a[]'],
		gives: 'a',
		run: (list: readonly number[]) => Math.max(...list),
		show: (shown) => [text('the largest of '), ...joined(',')(shown)]
	},
	smallest: {
		takes: ['a[]'],
		gives: 'a',
		run: (list: readonly number[]) => Math.min(...list),
		show: (shown) => [text('the smallest of '), ...joined(',')(shown)]
	},
	howMany: {
		takes: ['a[]'],
		gives: 'number',
		run: (list: readonly number[]) => list.length,
		show: (shown) => [text('how many: '), ...joined(',')(shown)]
	},
	upTo: {
		takes: ['a', 'a'],
		gives: 'a',
		run: (value: number, size: number) => Math.ceil(value / size - slack) * size,
		show: towards('up')
	},
	downTo: {
		takes: ['a', 'a'],
		gives: 'a',
		run: (value: number, size: number) => Math.floor(value / size + slack) * size,
		show: towards('down')
	},
	nearest: {
		takes: ['a', 'a'],
		gives: 'a',
		run: (value: number, size: number) => Math.floor(value / size + 0.5 + slack) * size,
		show: towards('nearest')
	},
	degrees: {
		takes: ['angle'],
		gives: 'number',
		run: (angle: number) => angle,
		show: ([angle = []]) => [...angle]
	},
	setbackK: {
		takes: ['angle'],
		gives: 'number',
		run: (angle: number) => Number(Math.tan((angle * Math.PI) / 360).toFixed(9)),
		show: ([angle = []]) => [
			'<mi>tan</mi><mfrac><mrow>',
			...angle,
			'</mrow><mn>2</mn></mfrac>'
		]
	},
	atEachLeg: {
		takes: ['length[]'],
		gives: 'length[]',
		run: (atBends: readonly number[]) =>
			[...atBends, 0].map((after, leg) => (atBends[leg - 1] ?? 0) + after),
		show: (shown) => [text('at each bent end: '), ...joined(',')(shown)]
	},
	stepOff: {
		takes: ['length', 'length', 'number'],
		gives: 'length[]',
		run: (start: number, pitch: number, count: number) =>
			Array.from({ length: Math.min(Math.max(0, Math.round(count)), 1000) }, (_, i) => start + i * pitch),
		show: ([start = [], pitch = []]) => [...start, text(', then every '), ...pitch]
	},
	minimumRadius: {
		takes: ['text', 'length'],
		gives: 'length',
		run: leastRadius,
		show: named('chart')
	},
	density: { takes: ['text'], gives: 'density', run: densityOf, show: named('density') },
	pilotDrill: { takes: ['length'], gives: 'length', run: pilotDrill, show: named('pilot for') },
	finalDrill: { takes: ['length'], gives: 'length', run: finalDrill, show: named('final for') },
	leastEdge: {
		takes: ['text'],
		gives: 'number',
		run: (head: string) => (head === 'countersunk' ? 2.5 : 2),
		show: named('factor')
	},
	headNumber: { takes: ['text'], gives: 'number', run: headNumber, show: named('head') },
	letters: { takes: ['text'], gives: 'text', run: lettersOf, show: named('letters') },
	rivetNumber: {
		takes: ['number', 'text', 'number', 'number'],
		gives: 'text',
		run: rivetNumber,
		show: ([head = [], letters = [], diameter = [], length = []]) => [
			text('MS20'),
			...head,
			...letters,
			...diameter,
			'<mo>-</mo>',
			...length
		]
	}
} as const satisfies Record<string, TradeFunction>;
