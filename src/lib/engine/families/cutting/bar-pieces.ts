import { type Drawing, rectangle, type Shape, text } from '../../figures/drawing.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { plate } from '../../figures/parts/plate.ts';
import { gridPieces, overrun } from '../../figures/parts/sheet-grid.ts';
import { barPieces } from '../../methods/bar-pieces.ts';
import { family, type SeenBy } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';
import { across, down } from '../../figures/size.ts';

const stories: readonly string[] = [
	'Clips for the floor panels are sawn from a length of extruded angle.',
	'Spacers for an engine baffle come off a length of bar.',
	'Short hat sections are sawn from one long extrusion for the practice wing.',
	'Hinge blanks are cut from a length of extruded hinge.',
	'Stop blocks for the brake are sawn from flat bar.',
	'Stand-offs for an instrument tray are sawn from square tube.'
];

// Of the pieces alone nobody can tell what was done with the kerf.
const asked = {
	1: ['count', 'used'],
	2: ['count', 'remnant'],
	3: ['count', 'used', 'remnant']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How many pieces come out of the bar, and how much of it do they use?',
	2: 'How many pieces come out, and what is left?',
	3: 'The pieces seem to fit exactly: how many come out, what is used and what is left?'
};

export const tasks = family({
	method: barPieces,
	draw(random, level) {
		const bar = random.pick([36, 48, 60, 72, 84, 96, 108, 120, 132, 144]);
		return {
			given: {
				bar,
				piece: pieceFor(random, level, bar),
				kerf: random.pick([1 / 32, 3 / 64, 1 / 16, 5 / 64, 3 / 32, 1 / 8])
			},
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			chief: {
				count: ['noKerf', 'up'],
				used: ['chipsKept', 'oneKerf'],
				remnant: ['chipsKept', 'nothingLeft']
			},
			apart: level === 3 ? [] : [['cuts', 'kerfBothSides']],
			told: [['Cut with', 'saw, square ends on the bar']],
			basis: 'A cut after every piece, unless the piece ends at the end of the bar.',
			cautions: ['saw']
		};
	},
	figure: ({ bar, piece, kerf }, say) =>
		barFromSide(say('bar', bar), say('piece', piece), `kerf ${say('kerf', kerf)}`),
	metal: (seen) => (seen.key === 'count' ? sawn(seen) : leftOver(seen))
});

/** Pieces of a few inches; at level 3 the bar is a whole number of them, but for the kerf. */
function pieceFor(random: Random, level: Level, bar: number): number {
	if (level !== 3) return random.int(12, 48) / 8;
	const whole = (size: number) => Number.isInteger(size * 64);
	const parts = Array.from({ length: 42 }, (_, i) => i + 7).map((count) => bar / count);
	return random.pick(parts.filter((size) => whole(size) && size >= 1.5));
}

type Sawn = SeenBy<typeof barPieces>;

/** Bar with the first piece cut and its far end beyond a break: not to scale. */
function barFromSide(bar: string, piece: string, kerf: string): Drawing {
	const [height, cut, saw] = [down(40), across(128), 12];
	const [breaks, goesOn, end] = [across(250), across(250) + 22, across(350)];
	return {
		title: 'A bar with its first piece cut off and the saw cut beside it.',
		shapes: [
			...plate({ left: 0, top: 0, right: cut, bottom: height }, 'metal-b'),
			...plate({ left: cut + saw, top: 0, right: breaks, bottom: height }, 'metal-a', ['right']),
			...plate({ left: goesOn, top: 0, right: end, bottom: height }, 'metal-a', ['left']),
			...dimensionAcross(0, cut, height + 22, height, piece),
			...dimensionAcross(cut, cut + saw, height + 22, height, kerf, { labelAt: 'after' }),
			...dimensionAcross(0, end, -18, 0, bar),
			text(end, height + 46, 'not to scale', { tone: 'soft', anchor: 'end' })
		]
	};
}

/** `count` pieces marked off on the bar with a kerf after each. */
function sawn(seen: Sawn): Drawing {
	const most = seen.rightAt('count');
	const pieces = Math.max(0, Math.min(Math.floor(seen.at('count')), most));
	return { title: seen.says, shapes: marked(seen, pieces, seen.case === 'over') };
}

/** The bar with the right pieces sawn off, and as much beyond them as the answer says. */
function leftOver(seen: Sawn): Drawing {
	const { bar } = seen.given;
	const width = across(370);
	const drawn = Math.max(0, Math.min(seen.at('remnant'), 1.15 * bar)) * (width / bar);
	const from = (seen.rightAt('used') / bar) * width;
	const line = seen.case === 'left' ? 'edge' : 'slip';
	return {
		title: seen.says,
		shapes: [
			...marked(seen, seen.rightAt('count'), false),
			rectangle(from, down(36) + 8, drawn, 14, 'none', line)
		]
	};
}

/** The bar with so many pieces on it, and one that runs off its end where there are too many. */
function marked(seen: Sawn, pieces: number, over: boolean): Shape[] {
	const { bar, piece, kerf } = seen.given;
	const [width, barHeight] = [across(370), down(36)];
	const scale = width / bar;
	const row = { columns: seen.rightAt('count'), rows: 1, across: barHeight / scale };
	const grid = { along: piece, kerf, ...row };
	return [
		rectangle(0, 0, width, barHeight, 'waste'),
		...gridPieces(grid, 0, pieces, { scale, fill: 'metal-b', line: 'thin' }),
		...(over ? overrun(grid, 1, { scale, fill: 'none', line: 'slip' }) : [])
	];
}
