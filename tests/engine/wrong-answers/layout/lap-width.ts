import { behind, rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	fraction,
	off,
	onScale,
	swapped
} from '../typed.ts';

interface Given {
	readonly D: number;
	readonly head: string;
	readonly rows: number;
	readonly pitch: number;
}

interface Right {
	readonly factor: number;
	readonly edge: number;
	readonly byPitch: number;
	readonly closest: number;
	readonly rowsApart: number;
	readonly width: number;
}

const { common, rare } = rulesOf<Given, Right>('lap-width');

/** FAA-H-8083-31B, ch. 4, Figs. 4-79 and 4-81. */
const factor = ({ head }: Given): number => (head === 'protruding' ? 2 : 2.5);
const otherFactor = ({ head }: Given): number => (head === 'protruding' ? 2.5 : 2);
const apart = ({ D, pitch }: Given): number => Math.max(0.75 * pitch, 2.5 * D);
const edge = (given: Given): number => factor(given) * given.D;

/** A lap from its edge distance, the distance between rows and the gaps between them. */
const lap = (side: number, between: number, gaps: number): number => 2 * side + gaps * between;

/** All fields filled in from an edge distance and a distance between rows: two rows ask for no edge. */
const worked = ({ rows }: Given, side: number, between: number): Typed => ({
	...(rows === 3 && { edge: fraction(side) }),
	rowsApart: decimal(between),
	width: decimal(lap(side, between, rows - 1))
});

const written = [
	common(
		'rowsApart',
		'as far apart as the rivets in a row',
		({ pitch }, { rowsApart }) => off(pitch, rowsApart, fraction),
		'fullPitch'
	),
	common(
		'rowsApart',
		'2.5 D, though 75 percent of the pitch is more',
		({ D }, { rowsApart }) => off(2.5 * D, rowsApart),
		'closestAlone',
		'other-step:closest'
	),
	common(
		'rowsApart',
		'75 percent of the pitch, though 2.5 D is more',
		({ pitch }, right) => off(0.75 * pitch, right.rowsApart),
		'pitchAlone',
		'other-step:byPitch'
	),
	common(
		'rowsApart',
		'2D between rows, as at the edge',
		({ D }, { rowsApart }) => off(2 * D, rowsApart, fraction),
		'other-step:edge',
		'edgeForRows'
	),
	common(
		'rowsApart',
		'3D, the least pitch',
		({ D }, { rowsApart }) => off(3 * D, rowsApart, fraction),
		'pitchFloor'
	),
	rare(
		'rowsApart',
		'4D between rows',
		({ D }, { rowsApart }) => off(4 * D, rowsApart, fraction),
		'greatestEdge'
	),
	common(
		'rowsApart',
		'half of the pitch: the rows are staggered',
		({ pitch }, { rowsApart }) => off(0.5 * pitch, rowsApart),
		'stagger'
	),
	rare(
		'rowsApart',
		'two thirds of the pitch',
		({ pitch }, { rowsApart }) => off((2 / 3) * pitch, rowsApart),
		'twoThirds',
		'pitchAlone+twoThirds'
	),
	rare(
		'rowsApart',
		'a quarter of the pitch: 75 percent taken off',
		({ pitch }, { rowsApart }) => off(0.25 * pitch, rowsApart),
		'quarterOff',
		'pitchAlone+quarterOff',
		'quarterAlone'
	),
	rare(
		'rowsApart',
		'divided by 0.75',
		({ pitch }, { rowsApart }) => off(pitch / 0.75, rowsApart),
		'overThreeQuarters'
	),
	rare(
		'rowsApart',
		'75 percent of the pitch, and 2.5 D on top',
		({ pitch, D }, { rowsApart }) => off(0.75 * pitch + 2.5 * D, rowsApart),
		'bothAdded'
	),
	rare(
		'rowsApart',
		'7.5 percent: the point',
		({ pitch }, { rowsApart }) => off(0.075 * pitch, rowsApart),
		'digits'
	),
	rare('rowsApart', 'the factor for the size', () => '.75', 'factor'),
	rare('rowsApart', 'the rule for the size', () => '2.5D', 'factor'),
	common(
		'rowsApart',
		'to the nearest eighth',
		(_, { rowsApart }) => onScale(rowsApart, 8),
		'rounding'
	),
	common(
		'rowsApart',
		'to the nearest sixteenth',
		(_, { rowsApart }) => onScale(rowsApart, 16),
		'rounding'
	),
	rare(
		'rowsApart',
		'cut off behind two digits',
		(_, { rowsApart }) => coarse(rowsApart, cutTo(2)),
		'rounding'
	),
	rare(
		'rowsApart',
		'two digits changed places',
		(_, { rowsApart }) => swapped(rowsApart, decimal, 1),
		'digits'
	),
	rare(
		'rowsApart',
		'millimetres, typed without the unit',
		(_, { rowsApart }) => bareMillimetres(rowsApart),
		'unit'
	),
	common(
		'width',
		'one edge distance only',
		(given, { width }) => off(edge(given) + (given.rows - 1) * apart(given), width),
		'oneEdge'
	),
	common(
		'width',
		'the two edges only, no rows between',
		(given, { width }) => off(2 * edge(given), width, fraction),
		'edgesOnly'
	),
	common(
		'width',
		'as many gaps as rows',
		(given, { width }) => off(lap(edge(given), apart(given), given.rows), width),
		'spacePerRow'
	),
	common(
		'width',
		'one gap for three rows',
		(given, { width }) => (given.rows === 3 ? off(lap(edge(given), apart(given), 1), width) : null),
		'oneSpace'
	),
	common(
		'rowsApart',
		'2D between the rows',
		(given, { rowsApart }) =>
			off(2 * given.D, rowsApart) && worked(given, edge(given), 2 * given.D),
		'edgeForRows'
	),
	rare(
		'rowsApart',
		'3D between the rows',
		(given, { rowsApart }) =>
			off(3 * given.D, rowsApart) && worked(given, edge(given), 3 * given.D),
		'pitchFloor'
	),
	rare(
		'rowsApart',
		'half of the pitch between the rows',
		(given) => worked(given, edge(given), 0.5 * given.pitch),
		'stagger'
	),
	rare(
		'rowsApart',
		'the edges from the rims of the holes',
		(given) => worked(given, edge(given) - given.D / 2, apart(given)),
		'toRim',
		({ head }) => (head === 'countersunk' ? 'protrudingFactor' : 'shankFactor')
	),
	rare(
		'width',
		'no edges: from the first row to the last',
		(given, { width }) => off((given.rows - 1) * apart(given), width),
		'noEdges',
		'other-step:rowsApart'
	),
	rare(
		'width',
		'both sheets: the lap twice',
		(_, { width }) => off(2 * width, width),
		'bothSheets'
	),
	rare(
		'width',
		'an edge distance beside every row',
		(given, { width }) => off(2 * given.rows * edge(given), width),
		'edgeAtEachRow'
	),
	rare(
		'rowsApart',
		'the dash number of D read as sixteenths',
		(given) => worked(given, 2 * edge(given), Math.max(0.75 * given.pitch, 5 * given.D)),
		'dashIn16ths',
		({ head }) => (head === 'protruding' ? 'greatestForLeast' : '')
	),
	rare(
		'rowsApart',
		'1/16 in added at each edge',
		(given) => worked(given, edge(given) + 1 / 16, apart(given)),
		'sixteenthAdded'
	),
	common('width', 'to the nearest sixteenth', (_, { width }) => onScale(width, 16), 'rounding'),
	rare('width', 'to the nearest eighth', (_, { width }) => onScale(width, 8), 'rounding'),
	rare(
		'width',
		'millimetres, typed without the unit',
		(_, { width }) => bareMillimetres(width),
		'unit'
	),
	rare(
		'width',
		'two digits changed places',
		(_, { width }) => swapped(width, decimal, 1),
		'digits'
	),
	rare(
		'rowsApart',
		'two mistakes: one edge, and the pitch between rows',
		(given) => ({
			...worked(given, edge(given), given.pitch),
			width: decimal(edge(given) + (given.rows - 1) * given.pitch)
		}),
		'fullPitch',
		'oneEdge'
	),
	rare(
		'edge',
		'two mistakes: the other head, and 2.5 D between rows',
		(given, { rowsApart }) =>
			off(2.5 * given.D, rowsApart) && worked(given, otherFactor(given) * given.D, 2.5 * given.D),
		'closestAlone',
		'other-step:closest',
		'flushFactor',
		'protrudingFactor'
	),
	common(
		'edge',
		'the factor of the other head',
		(given, right) => off(otherFactor(given) * given.D, right.edge, fraction),
		'flushFactor',
		'protrudingFactor'
	),
	rare(
		'edge',
		'3D for the edge',
		({ D }, right) => off(3 * D, right.edge, fraction),
		'pitchFactor'
	),
	rare(
		'edge',
		'1.5 D for the edge',
		({ D }, right) => off(1.5 * D, right.edge, fraction),
		'shankFactor'
	),
	common(
		'edge',
		'both edges together',
		(given, right) => off(2 * edge(given), right.edge, fraction),
		'dashIn16ths',
		({ head }) => (head === 'protruding' ? 'greatestForLeast' : '')
	),
	common(
		'edge',
		'from the rim of the hole',
		(given, right) => off(edge(given) - given.D / 2, right.edge, fraction),
		'toRim',
		({ head }) => (head === 'countersunk' ? 'protrudingFactor' : 'shankFactor')
	),
	common('edge', 'the rule for the size', (given) => `${factor(given)}D`, 'factor'),
	rare('edge', 'the factor for the size', (given) => `${factor(given)}`, 'factor'),
	rare(
		'edge',
		'the preferred one, 1/16 in more',
		(_, right) => fraction(right.edge + 1 / 16),
		'sixteenthAdded'
	),
	rare(
		'edge',
		'the dash number of D read as sixteenths',
		(given, right) => off(2 * edge(given), right.edge, fraction),
		'dashIn16ths',
		({ head }) => (head === 'protruding' ? 'greatestForLeast' : '')
	),
	common(
		'rowsApart',
		'the other head, carried on correctly',
		(given) => worked(given, otherFactor(given) * given.D, apart(given)),
		'flushFactor',
		'protrudingFactor'
	),
	common(
		'rowsApart',
		'the pitch between rows, carried on correctly',
		(given) => worked(given, edge(given), given.pitch),
		'fullPitch'
	),
	common(
		'rowsApart',
		'2.5 D between rows, carried on correctly',
		(given, { rowsApart }) =>
			off(2.5 * given.D, rowsApart) && worked(given, edge(given), 2.5 * given.D),
		'closestAlone',
		'other-step:closest'
	),
	common(
		'width',
		'edge and rows right, one gap for three rows',
		(given) => ({
			...worked(given, edge(given), apart(given)),
			width: decimal(lap(edge(given), apart(given), 1))
		}),
		'oneSpace'
	),
	common(
		'width',
		'edge and rows right, one edge only',
		(given) => ({
			...worked(given, edge(given), apart(given)),
			width: decimal(edge(given) + (given.rows - 1) * apart(given))
		}),
		'oneEdge'
	),
	rare(
		'edge',
		'edge and rows each in the field of the other',
		(_, right) => ({
			edge: decimal(right.rowsApart),
			rowsApart: fraction(right.edge),
			width: decimal(right.width)
		}),
		'other-step'
	),
	rare(
		'rowsApart',
		'two mistakes: the other head, and 2D between rows',
		(given) => worked(given, otherFactor(given) * given.D, 2 * given.D),
		'flushFactor',
		'protrudingFactor',
		'edgeForRows'
	)
];

export const rules = behind<Right>(
	'width',
	({ rowsApart }) => ({ rowsApart: decimal(rowsApart) }),
	written
);
