import { brokenRow } from '../../figures/parts/hole-row.ts';
import { rivetRow } from '../../methods/rivet-row.ts';
import { family } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';
import { rowLaidOut } from './parts/row-laid-out.ts';

/** What is riveted, with its rivets in 32nds. */
type Piece = readonly [story: string, dashes: readonly number[]];

const long: readonly Piece[] = [
	['A seam in a baggage floor gets one row of rivets from end to end.', [3, 4, 5]],
	['A new nose rib is riveted to the leading edge skin along its whole flange.', [3, 4]],
	['A stiffener is riveted across a panel from edge to edge.', [3, 4, 5]],
	['The hinge half of a cowl door is riveted along its whole length.', [3, 4]],
	['A hat section reaches from frame to frame; you lay out the row along one flange.', [3, 4, 5]],
	['A retainer strip holds the seal of a baggage door.', [3, 4]],
	['A spar web gets an angle along its lower edge.', [5, 6]],
	['A floor beam gets a doubler along its upper flange.', [5, 6]]
];

/** Pieces a few inches long. */
const short: readonly Piece[] = [
	['An angle clip is riveted to a floor panel along one leg.', [3, 4, 5]],
	['A gusset gets one row of rivets along its longer edge.', [4, 5, 6]],
	['A short stiffener goes between two lightening holes.', [3, 4, 5]],
	['The hinge half of an inspection door is riveted along its whole length.', [3, 4]],
	['A filler strip closes the end of a seam.', [3, 4, 5]],
	['The flange of a pulley bracket is riveted to a web.', [4, 5, 6]]
];

const asked = {
	// Of the rivets alone nobody can tell which margin was forgotten.
	1: ['run', 'count'],
	2: ['count', 'pitch'],
	3: ['count', 'pitch', 'positions']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How far is it from the first hole to the last, and how many rivets is that?',
	2: 'How many rivets, and at what pitch?',
	3: 'Where do the holes go?'
};

const chief = {
	run: ['noMargin', 'oneMargin'],
	count: ['spacesForRivets'],
	pitch: ['pitchNotDivided', 'byRivets', 'wholeLength'],
	positions: ['firstOnEdge', 'firstAtPitch']
};

/** Where the run is no whole number of maximum pitches. */
const unevenChief = { ...chief, count: ['noMargin', 'spacesForRivets', 'spacesDown'] };

/** Pitches in rivet diameters: from 4 D, the low end of the average, to 8 D. */
const pitches = [4, 5, 6, 7, 8] as const;

export const tasks = family({
	method: rivetRow,
	draw(random, level) {
		const [story, dashes] = random.pick(level === 3 ? short : long);
		const dash = random.pick(dashes);
		const D = dash / 32;
		const greatestPitch = random.pick(level === 3 ? pitches.slice(2) : pitches) * D;
		return {
			given: { ...pieceFor(random, level, greatestPitch, D), greatestPitch },
			story,
			question: questions[level],
			asked: asked[level],
			chief: level === 1 ? chief : unevenChief,
			apart: [['pitchNotDivided', 'pitchToSixteenths']],
			told: [['Rivets', `MS20470AD${dash}`]],
			basis:
				'The fewest rivets in equal spaces between the end margins, none wider than the maximum pitch.',
			cautions: ['drill']
		};
	},
	figure: ({ endMargin, greatestPitch, length }, say) =>
		brokenRow({
			margin: say('endMargin', endMargin),
			pitch: `≤ ${say('greatestPitch', greatestPitch)}`,
			length: say('length', length)
		}),
	metal: (seen) => rowLaidOut(seen, seen.given.length, seen.given.endMargin)
});

/** End margins in rivet diameters. */
const margins = [2, 2.5, 3] as const;

/**
 * Pieces in eighths of an inch: at the first level with a whole number of pitches between the end holes,
 * at the third short ones, since every hole is to be written down.
 */
function pieceFor(random: Random, level: Level, pitch: number, D: number) {
	if (level === 1) return random.pick(evenPieces(pitch, D));
	const [least, most] = level === 3 ? [4, 7] : [8, 16];
	const length = random.int(Math.ceil(least * pitch * 8), Math.floor(most * pitch * 8)) / 8;
	return { length, endMargin: random.pick(margins) * D };
}

/** Pieces of 8 to 30 pitches and their end margins. */
function evenPieces(pitch: number, D: number) {
	const all = margins.flatMap((times) =>
		Array.from({ length: 30 - 8 + 1 }, (_, i) => ({
			length: (i + 8) * pitch + 2 * times * D,
			endMargin: times * D
		}))
	);
	return all.filter(({ length }) => Number.isInteger(length * 8));
}
