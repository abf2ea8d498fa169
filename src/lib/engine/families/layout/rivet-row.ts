import { brokenRow, stripWithHoles } from '../../figures/parts/hole-row.ts';
import type { Value } from '../../quantity/kind.ts';
import { rivetRow } from '../../methods/rivet-row.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

const stories: readonly string[] = [
	'The lower seam of a baggage floor gets one row of rivets from end to end.',
	'A new nose rib is riveted to the leading edge skin along its whole flange.',
	'A stiffener goes across a panel between two stringers.',
	'The hinge half of a cowl door is riveted along its whole length.',
	'A hat section closes the gap between two frames, riveted along both flanges alike.'
];

const asked = {
	1: ['count'],
	2: ['count', 'pitch'],
	3: ['count', 'pitch', 'positions']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How many rivets does the row take?',
	2: 'How many rivets, and at what pitch?',
	3: 'Where do the holes go?'
};

/** Pitches in rivet diameters: from 4 D, the low end of the average, to 8 D. */
const pitches = [4, 5, 6, 7, 8] as const;

export const tasks = family({
	method: rivetRow,
	draw(random, level) {
		const dash = random.pick([3, 4, 5, 6]);
		const D = dash / 32;
		const greatestPitch = random.pick(level === 3 ? pitches.slice(2) : pitches) * D;
		const endMargin = random.pick([2, 2.5, 3]) * D;
		return {
			given: { length: lengthFor(random, level, greatestPitch), endMargin, greatestPitch },
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			told: [['Rivets', `MS20470AD${dash}`]],
			basis: 'Equal spaces between the end margins, none wider than the greatest pitch.',
			cautions: ['drill']
		};
	},
	figure: ({ endMargin, greatestPitch, length }, say) =>
		brokenRow({
			margin: say('endMargin', endMargin),
			pitch: `≤ ${say('greatestPitch', greatestPitch)}`,
			length: say('length', length)
		}),
	effect: (input, say) => {
		const { key, entered, right } = input;
		const [wrong, good] = [laidOut(input, entered, say), laidOut(input, right[key] ?? 0, say)];
		return wrong && good ? { entered: wrong, right: good } : null;
	}
});

/** Pieces in eighths of an inch; short ones where every hole is to be written down. */
function lengthFor(random: Random, level: Level, pitch: number): number {
	const [least, most] = level === 3 ? [4, 7] : level === 2 ? [8, 16] : [8, 30];
	return random.int(Math.ceil(least * pitch * 8), Math.floor(most * pitch * 8)) / 8;
}

type Input = EffectInput<typeof rivetRow>;
type Given = Input['given'];

/** More holes than this are not drawn: they would run into one another. */
const mostHoles = 60;

/** The row as an answer to `input.key` would be laid out, or null where that is no row. */
function laidOut({ given, right, key }: Input, value: Value, say: Say): Outcome | null {
	const count = Number(right.count);
	if (key === 'positions')
		return typeof value === 'object' ? byHoles(given, value, count, say) : null;
	if (typeof value !== 'number') return null;
	if (key === 'pitch') return byHoles(given, stepOff(given.endMargin, value, count), count, say);
	return key === 'count' || key === 'spaces'
		? byCount(given, key === 'spaces' ? value + 1 : value, count, say)
		: null;
}

function stepOff(first: number, pitch: number, count: number): number[] {
	return Array.from({ length: count }, (_, i) => first + i * pitch);
}

/** That many rivets spread evenly between the end margins. */
function byCount(given: Given, rivets: number, wanted: number, say: Say): Outcome | null {
	if (!Number.isInteger(rivets) || rivets < 2 || rivets > mostHoles) return null;
	const { length, endMargin, greatestPitch } = given;
	const pitch = (length - 2 * endMargin) / (rivets - 1);
	const wide = pitch > greatestPitch + 1e-6;
	const verdict = wide
		? 'wider than the greatest pitch.'
		: rivets > wanted
			? 'more holes than the row needs.'
			: 'the fewest that keep within the greatest pitch.';
	return {
		drawing: stripWithHoles({
			length,
			endMargin,
			holes: stepOff(endMargin, pitch, rivets),
			off: wide
		}),
		says: `${rivets} rivets stand ${say('pitch', pitch)} apart: ${verdict}`
	};
}

function byHoles(given: Given, holes: readonly number[], wanted: number, say: Say): Outcome | null {
	const [first, last] = [holes[0], holes.at(-1)];
	if (first === undefined || last === undefined || holes.length > mostHoles) return null;
	const { length, endMargin, greatestPitch } = given;
	const left = length - last;
	const widest = Math.max(...holes.slice(1).map((at, i) => at - (holes[i] ?? 0)));
	const wide = widest > greatestPitch + 1 / 64;
	const off = [first, left].some((margin) => Math.abs(margin - endMargin) > 1 / 64);
	const end =
		left < 0
			? 'the last one runs off the piece'
			: `the last one ${say('run', left)} from the far end`;
	const also = wide
		? `; spaces of ${say('run', widest)} are wider than the greatest pitch`
		: holes.length > wanted
			? '; there are more holes than the row needs'
			: '';
	return {
		drawing: stripWithHoles({ length, endMargin, holes, off: off || wide }),
		says: `First hole ${say('run', first)} from the reference edge, ${end}${also}.`
	};
}
