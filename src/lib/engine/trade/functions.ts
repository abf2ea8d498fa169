import type { Part, TradeFunction } from '../solver/trade-function.ts';
import { atEachLeg, bendAllowance, setbackK } from './bend-geometry.ts';
import { densityOf } from './densities.ts';
import { chartSize, drillNumber, nextLarger, nextSmaller } from './drill-chart.ts';
import { annealed, leastRadius, radiusBeside } from './least-radius.ts';
import { barUnder, nextBar } from './nose-bars.ts';
import {
	headNumber,
	lettersOf,
	olderRivetNumber,
	rivetNumber,
	rivetNumberParts
} from './rivet-code.ts';
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

/** Words in a formula. Plain blanks at their ends would be dropped, so they are made to stay. */
function text(words: string): string {
	return words === '' ? '' : `<mtext>${words.replace(/^ | $/g, '\u00a0')}</mtext>`;
}

/** A list written out with a sign between its members. */
function joined(sign: string) {
	return ([list = []]: readonly (readonly Part[])[]): Part[] =>
		list.map((part) => (typeof part === 'string' ? part : { ...part, join: sign }));
}

function named(name: string) {
	return (shown: readonly (readonly Part[])[]): Part[] => [
		`<mtext>${name}\u00a0</mtext><mrow><mo>(</mo>`,
		...shown.flatMap((part, i) => (i === 0 ? part : ['<mo>,</mo>', ...part])),
		'<mo>)</mo></mrow>'
	];
}

const apart = '<mspace width="0.5em"/>';

/** A rivet number's parts behind its standard, a little apart so that each can be read. */
function numberWith(standard: string) {
	return ([head = [], letters = [], diameter = [], length = []]: readonly (readonly Part[])[]) => [
		text(standard),
		apart,
		...head,
		apart,
		...letters,
		apart,
		...diameter,
		'<mo>-</mo>',
		...length
	];
}

const arrow = '<mo>→</mo>';

/** Rounds to a whole number of steps; a step of 1 is not worth showing. */
function towards(direction: string) {
	return ([value = [], size = []]: readonly (readonly Part[])[]): Part[] => {
		const whole = size.length === 1 && size[0] === '<mn>1</mn>';
		const end = whole
			? [text(`whole number ${direction}`)]
			: [text(`${direction} to a full `), ...size];
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
	forEach: {
		takes: ['a', 'b[]'],
		gives: 'a[]',
		run: (value: number, list: readonly number[]) => list.map(() => value),
		show: ([value = []]) => [...value, text(' for each')]
	},
	setbackK: {
		takes: ['angle'],
		gives: 'number',
		run: setbackK,
		show: ([angle = []]) => ['<mi>tan</mi><mfrac><mrow>', ...angle, '</mrow><mn>2</mn></mfrac>']
	},
	bendAllowance: {
		takes: ['length', 'length', 'angle'],
		gives: 'length',
		run: bendAllowance,
		show: ([R = [], T = [], angle = []]) => [
			'<mrow><mo>(</mo><mn>0.01743</mn><mo>×</mo>',
			...R,
			'<mo>+</mo><mn>0.0078</mn><mo>×</mo>',
			...T,
			'<mo>)</mo></mrow><mo>×</mo><mrow><mo>(</mo>',
			...angle,
			'<mo>)</mo></mrow>'
		]
	},
	atEachLeg: {
		takes: ['length[]', 'length[]'],
		gives: 'length[]',
		run: atEachLeg,
		show: (shown) => [
			text('one at an outer leg, two at a leg between bends: '),
			...joined(',')(shown)
		]
	},
	stepOff: {
		takes: ['length', 'length', 'number'],
		gives: 'length[]',
		run: (start: number, pitch: number, count: number) =>
			Array.from(
				{ length: Math.min(Math.max(0, Math.round(count)), 1000) },
				(_, i) => start + i * pitch
			),
		show: ([start = [], pitch = []]) => [...start, text(', then every '), ...pitch]
	},
	minimumRadius: {
		takes: ['text', 'length'],
		gives: 'length',
		run: leastRadius,
		show: named('chart')
	},
	radiusBeside: {
		takes: ['text', 'length', 'number', 'number'],
		gives: 'length',
		run: radiusBeside,
		show: ([alloy = [], thickness = []]) => [
			text('the cell beside '),
			...named('chart')([alloy, thickness])
		]
	},
	annealed: { takes: ['text'], gives: 'text', run: annealed, show: named('annealed') },
	nextBar: {
		takes: ['length'],
		gives: 'length',
		run: nextBar,
		show: named('nose bar of at least')
	},
	barUnder: { takes: ['length'], gives: 'length', run: barUnder, show: named('nose bar under') },
	density: { takes: ['text'], gives: 'density', run: densityOf, show: named('density') },
	pilotDrill: { takes: ['length'], gives: 'length', run: pilotDrill, show: named('pilot for') },
	finalDrill: { takes: ['length'], gives: 'length', run: finalDrill, show: named('final for') },
	chartSize: { takes: ['text'], gives: 'length', run: chartSize, show: named('chart') },
	nextLarger: { takes: ['text'], gives: 'text', run: nextLarger, show: named('next larger than') },
	nextSmaller: {
		takes: ['text'],
		gives: 'text',
		run: nextSmaller,
		show: named('next smaller than')
	},
	drillNumber: { takes: ['text'], gives: 'number', run: drillNumber, show: named('number of') },
	headNumber: { takes: ['text'], gives: 'number', run: headNumber, show: named('number of') },
	letters: { takes: ['text'], gives: 'text', run: lettersOf, show: named('letters of') },
	rivetNumber: {
		takes: ['number', 'text', 'number', 'number'],
		gives: 'text',
		run: rivetNumber,
		show: numberWith('MS20')
	},
	olderRivetNumber: {
		takes: ['number', 'text', 'number', 'number'],
		gives: 'text',
		run: olderRivetNumber,
		show: numberWith('AN')
	},
	headIn: {
		takes: ['text'],
		gives: 'text',
		run: (number: string) => rivetNumberParts(number).head,
		show: named('head in')
	},
	alloyIn: {
		takes: ['text'],
		gives: 'text',
		run: (number: string) => rivetNumberParts(number).alloy,
		show: named('alloy by the letters in')
	},
	dashAfterLetters: {
		takes: ['text'],
		gives: 'number',
		run: (number: string) => rivetNumberParts(number).diameterDash,
		show: named('number behind the letters in')
	},
	dashAtEnd: {
		takes: ['text'],
		gives: 'number',
		run: (number: string) => rivetNumberParts(number).lengthDash,
		show: named('number behind the dash in')
	}
} as const satisfies Record<string, TradeFunction>;
