import { type Drawing, rectangle } from '../../figures/drawing.ts';
import { type Grid, gridPieces, overrun, sheetAndBlank } from '../../figures/parts/sheet-grid.ts';
import { piecesPerSheet } from '../../methods/pieces-per-sheet.ts';
import { isOneBatch } from '../../trade/parts-that-exist/batch.ts';
import { stockSheets } from '../../trade/stock.ts';
import { family, type SeenBy } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';
import { both } from '../../figures/size.ts';

const flatParts: readonly string[] = [
	'Inspection plates for the wing are sheared from a full sheet.',
	'A batch of flat gussets is wanted for the next ten tail cones.',
	'Blanks for practice lap joints are sheared for the whole class.',
	'Doublers for the cabin floor are cut from new stock.',
	'Cover plates for the tail cone are cut for stock.',
	'Panels are cut for the next lesson in riveting.'
];

/** Flat parts out of sheet that a foot shear does not cut. */
const sawnParts: readonly string[] = [
	'Flat backing plates are sawn from a full sheet for the stores.',
	'Jig plates for the drill press are sawn from one sheet.',
	'Wear plates for a cargo door are sawn flat and stay flat.',
	'Filler plates for a spar splice are sawn from new stock.',
	'Blank plates for the engraver are sawn from a sheet.',
	'Flat stiffening plates go under the floor beams; they are sawn from new stock.'
];

/** Parts bent square across their length, so that their length lies along the grain. */
const bentParts: readonly string[] = [
	'Shelves for a parts rack are sawn as flat blanks and turned up at both ends afterwards.',
	'Kick plates are sawn as blanks; both of their bends run square across.',
	'Covers for a control run are sawn from a full sheet and get a flange at each short end.',
	'Step covers are sawn as flat blanks before they go to the brake for two bends across.',
	'Battery tray bottoms are sawn as blanks; each is turned up square at both ends.',
	'Wiring trough covers are sawn flat and get a lip at each short end.'
];

const questions: Readonly<Record<Level, string>> = {
	1: 'How many blank lengths go along the sheet, and how many blanks come out?',
	2: 'How many blank lengths go along, and how many blanks come out unturned?',
	3: 'How many blanks come out laid along, laid across, and the better way?'
};

const oneWay = 'All blanks lie one way, in straight rows.';
const bases: Readonly<Record<Level, string>> = {
	1: `${oneWay} Their length lies along the sheet; a shear has no kerf.`,
	2: 'Bend lines run across the grain (FAA-H-8083-31B, ch. 4, p. 4-58), so every blank lies along the sheet.',
	3: `${oneWay} They stay flat, so they may be turned a quarter.`
};

const stories: Readonly<Record<Level, readonly string[]>> = {
	1: flatParts,
	2: bentParts,
	3: sawnParts
};

/** A foot shear cuts up to 0.063 in (airframe handbook, p. 4-9). */
const told: Readonly<Record<Level, readonly (readonly [string, string])[]>> = {
	1: [
		['Sheet', '2024-T3, 0.040 in'],
		['Cut with', 'squaring shear']
	],
	2: [
		['Cut with', 'circular saw'],
		['Grain', 'along the sheet'],
		['Bend lines', 'across the blank']
	],
	3: [
		['Sheet', '2024-T3, 0.080 in'],
		['Cut with', 'circular saw'],
		['Grain', 'along the sheet']
	]
};

// Of the blanks alone nobody can tell which way the mistake was made.
const asked = {
	1: ['alongLength', 'lengthwise'],
	2: ['alongLength', 'lengthwise'],
	3: ['lengthwise', 'crosswise', 'count']
} as const;

/** How sawn blanks lie on the sheet, and which way the kerf costs one of them. */
interface Lay {
	readonly turned: boolean;
	readonly tight: 'Along' | 'Across';
}

/**
 * Either way of laying the blanks comes out as the better one about as often, and the kerf costs as often
 * along as across. Of blanks that are to be turned, fewer are better so, and none is where the kerf costs
 * one across.
 */
function layFor(random: Random, level: Level): Lay {
	if (level === 3 && random.int(1, 3) > 1) return { turned: true, tight: 'Along' };
	return { turned: false, tight: random.pick(['Along', 'Across'] as const) };
}

function chiefOf(level: Level, { turned, tight }: Lay) {
	if (level === 1) return { lengthwise: ['area', 'turned', 'addedUp'] };
	if (level === 2) return { lengthwise: [`noKerf${tight}`, 'turned'] };
	return turned
		? { count: ['bothWays', 'alongOnly', `noKerfTurned${tight}`] }
		: { count: ['bothWays', 'acrossOnly', `noKerf${tight}`] };
}

export const tasks = family({
	method: piecesPerSheet,
	draw(random, level) {
		const sheet = random.pick(stockSheets);
		const kerf = level === 1 ? 0 : random.pick([1 / 16, 3 / 32, widestKerf]);
		const lay = layFor(random, level);
		return {
			given: {
				sheetLength: sheet.length,
				sheetWidth: sheet.width,
				...blankFor(random, level, sheet, lay),
				kerf
			},
			story: random.pick(stories[level]),
			question: questions[level],
			asked: asked[level],
			chief: chiefOf(level, lay),
			told: told[level],
			basis: bases[level],
			cautions: level === 1 ? ['shear', 'edges'] : ['saw', 'edges']
		};
	},
	figure: ({ sheetLength, sheetWidth, pieceLength, pieceWidth, kerf }, say, like) =>
		sheetAndBlank(
			{
				length: sheetLength,
				width: sheetWidth,
				labels: [say('sheetLength', sheetLength), say('sheetWidth', sheetWidth)]
			},
			{
				length: pieceLength,
				width: pieceWidth,
				labels: [say('pieceLength', pieceLength), say('pieceWidth', pieceWidth)]
			},
			kerf > 0 ? `kerf ${say('kerf', kerf)}` : 'no kerf',
			like?.sheetLength
		),
	metal: cut
});

/** A blank of which a sheet gives no more than are cut in one go. */
function blankFor(random: Random, level: Level, sheet: Sheet, lay: Lay) {
	for (;;) {
		const blank = level === 1 ? shearedBlank(random) : sawnBlank(random, sheet, lay);
		const { pieceLength, pieceWidth } = blank;
		const most = (sheet.length * sheet.width) / (pieceLength * pieceWidth);
		if (isOneBatch(most, level === 1 ? 'shear' : 'saw')) return blank;
	}
}

/** A blank that is longer than it is wide. */
function shearedBlank(random: Random) {
	const pieceWidth = random.int(12, 44) / 4;
	const least = Math.ceil(pieceWidth * 4) + 2;
	return { pieceLength: random.int(least, least + 36) / 4, pieceWidth };
}

interface Sheet {
	readonly length: number;
	readonly width: number;
}

/** Of a circular saw, inches. */
const widestKerf = 1 / 8;

/** Inches: what is handed to a saw, by the side of the blank. */
const sawn = { length: [7, 20], width: [2.5, 10] } as const;

/**
 * A blank of which one side goes into the sheet a whole number of times, so that the kerf costs a blank
 * there, and the other leaves enough over that it costs none.
 */
function sawnBlank(random: Random, { length, width }: Sheet, { turned, tight }: Lay) {
	const [underLength, underWidth] = turned ? [width, length] : [length, width];
	const lengthFits = (tight === 'Along') !== turned;
	const lengths = sidesIn(underLength, lengthFits, sawn.length);
	const pieceLength = random.pick(lengths);
	const widths = sidesIn(underWidth, !lengthFits, sawn.width).filter((one) => one < pieceLength);
	return { pieceLength, pieceWidth: random.pick(widths) };
}

/**
 * Sides of a blank, in quarters of an inch, that fill a side of the sheet, or leave a third of one over and
 * enough for every kerf.
 */
function sidesIn(side: number, fills: boolean, [least, most]: readonly [number, number]): number[] {
	const quarters = Array.from({ length: (most - least) * 4 + 1 }, (_, i) => least + i / 4);
	const spare = (one: number) => Math.max(one / 3, (side / one) * widestKerf);
	return quarters.filter((one) => (fills ? side % one === 0 : side % one >= spare(one)));
}

type Laid = SeenBy<typeof piecesPerSheet>;

/** So many blanks laid out on the sheet; those that do not fit run off its end. */
function cut(seen: Laid): Drawing {
	const grid = gridOn(seen);
	const [count, most] = [seen.at('entered'), seen.at('holds')];
	const whole = Math.max(0, Math.min(Math.floor(count), most));
	const width = both(330);
	const scale = width / seen.given.sheetLength;
	const height = seen.given.sheetWidth * scale;
	return {
		title: seen.says,
		shapes: [
			rectangle(0, 0, width, height, 'waste'),
			...gridPieces(grid, 0, whole, { scale, fill: 'metal-b', line: 'thin' }),
			...overrun(grid, Math.max(0, Math.ceil(count - most)), { scale, fill: 'none', line: 'slip' })
		]
	};
}

/** The blanks the way they lie in the outcome. */
function gridOn(seen: Laid): Grid {
	const { pieceLength, pieceWidth, kerf } = seen.given;
	return seen.shows.way === 'across'
		? {
				along: pieceWidth,
				across: pieceLength,
				kerf,
				columns: seen.rightAt('turnedAlong'),
				rows: seen.rightAt('turnedAcross')
			}
		: {
				along: pieceLength,
				across: pieceWidth,
				kerf,
				columns: seen.rightAt('alongLength'),
				rows: seen.rightAt('acrossWidth')
			};
}
