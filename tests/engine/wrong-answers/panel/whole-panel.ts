import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	dash,
	decimal,
	down,
	fraction,
	nearest,
	number,
	off,
	sum,
	swapped,
	up
} from '../typed.ts';

interface Given {
	readonly layers: readonly number[];
	readonly layersB?: readonly number[];
	readonly rowLength?: number;
	readonly greatestPitch?: number;
	readonly rows: number;
	/** Told at level 1, where the rows are marked. */
	readonly count?: number;
}

interface Right {
	readonly threeT: number;
	readonly diameter: number;
	readonly needed: number;
	readonly length: number;
	readonly lengthB: number;
	readonly final: number;
	readonly preferred: number;
	readonly count: number;
	readonly pitch: number;
	readonly total: number;
}

const write = rulesOf<Given, Right>('whole-panel');

/** The fields of a task in order, as somebody fills them in who has got them right so far. */
const filled: readonly [keyof Right, (value: number) => string][] = [
	['threeT', decimal],
	['diameter', (D) => dashOf(D)],
	['needed', decimal],
	['length', fraction],
	['lengthB', fraction],
	['final', decimal],
	['preferred', fraction],
	['count', number],
	['pitch', decimal],
	['total', number]
];

/** Fields that a task of these givens asks for. */
function isAsked(key: keyof Right, { layersB, rowLength }: Given): boolean {
	if (key === 'lengthB') return layersB !== undefined;
	return rowLength !== undefined || !['preferred', 'count', 'pitch'].includes(key);
}

/** A wrong entry stands behind the right ones that come before it: the page wants every field filled. */
const onSheet =
	(one: typeof write.common): typeof write.common =>
	(key, why, answer, ...names) =>
		one(
			key,
			why,
			(given, right) => {
				const typed = answer(given, right);
				if (typeof typed !== 'string') return typed;
				const before = filled.slice(
					0,
					filled.findIndex(([field]) => field === key)
				);
				const asked = before.filter(([field]) => isAsked(field, given));
				const rights = asked.map(([field, way]) => [field, way(right[field])] as const);
				return { ...Object.fromEntries(rights), [key]: typed };
			},
			...names
		);

const common = onSheet(write.common);
const rare = onSheet(write.rare);

/** Final drills as every bench has them on the wall, by 32nds. */
const finals: Readonly<Record<number, string>> = { 3: '#40', 4: '#30', 5: '#21', 6: '#11' };

const most = (layers: readonly number[]): number => Math.max(...layers);
const rivet = (threeT: number): number => Math.max(3 / 32, up(threeT, 32));
const bin = (grip: number, D: number): number => up(grip + 1.5 * D, 16);
const dashOf = (D: number): string => `-${Math.round(D * 32)}`;

/** A slip by its id where there is one stack, and at A where there are two. */
const atA =
	(step: string, id: string) =>
	({ layersB }: Given): string =>
		layersB ? `${step}.${id}` : id;

const twoOnly =
	(name: string) =>
	({ layersB }: Given): string =>
		layersB ? name : '';

/** A wrong rivet, and all that hangs on it worked rightly from it. */
function carried(
	given: Given,
	{ threeT, D }: { threeT: number; D: number },
	right: Right
): Typed | null {
	const { layers, layersB, rowLength, greatestPitch, rows } = given;
	const final = finals[Math.round(D * 32)];
	if (off(D, right.diameter) === null || final === undefined) return null;
	const rivets = {
		threeT: decimal(threeT),
		diameter: dashOf(D),
		needed: decimal(sum(layers) + 1.5 * D),
		length: fraction(bin(sum(layers), D)),
		final
	};
	if (rowLength === undefined || greatestPitch === undefined) {
		return { ...rivets, total: number((given.count ?? 0) * rows) };
	}
	const edge = 2 * D + 1 / 16;
	const run = rowLength - 2 * edge;
	const spaces = up(run / greatestPitch, 1);
	return {
		...rivets,
		...(layersB ? { lengthB: fraction(bin(sum(layersB), D)) } : {}),
		preferred: fraction(edge),
		count: number(spaces + 1),
		pitch: decimal(run / spaces),
		total: number((spaces + 1) * rows)
	};
}

/** The row laid out from a run, in all that is asked of it. */
function rowOf(
	{ rows, greatestPitch = 0 }: Given,
	run: number,
	{ count, pitch }: Right
): Typed | null {
	const spaces = up(run / greatestPitch, 1);
	if (off(spaces + 1, count) === null && off(run / spaces, pitch) === null) return null;
	return {
		count: number(spaces + 1),
		pitch: decimal(run / spaces),
		total: number((spaces + 1) * rows)
	};
}

const runOf = ({ rowLength = 0 }: Given, margins: number): number => rowLength - margins;

/** A rivet by a wrong 3T. */
const by = (threeT: number) => ({ threeT, D: rivet(threeT) });

/** A wrong 3T and the size it leads to. */
function rivetBy(threeT: number, right: Right): Typed | null {
	if (off(threeT, right.threeT) === null) return null;
	return { threeT: decimal(threeT), diameter: dashOf(rivet(threeT)) };
}

/** A wrong length and the bin it leads to, behind a right rivet. */
function lengthBy(needed: number, { threeT, diameter, needed: right }: Right): Typed | null {
	if (off(needed, right) === null) return null;
	return {
		threeT: decimal(threeT),
		diameter: dashOf(diameter),
		needed: decimal(needed),
		length: fraction(up(needed, 16))
	};
}

export const rules = [
	write.common(
		'threeT',
		'the doubler left out of the stack, and all worked on with that',
		(given, right) =>
			given.layersB && off(3 * most(given.layersB), right.threeT) !== null
				? carried(given, by(3 * most(given.layersB)), right)
				: null,
		'outerLeftOut'
	),
	write.common(
		'threeT',
		'three times the whole stack',
		({ layers }, right) => rivetBy(3 * sum(layers), right),
		'wholeStack',
		// A 9/32 in rivet is not stocked.
		({ layers }) => (rivet(3 * sum(layers)) > 1 / 4 ? 'unstocked' : '')
	),
	write.common(
		'threeT',
		'three times the thinnest',
		({ layers }, right) => rivetBy(3 * Math.min(...layers), right),
		'thinnest'
	),
	common(
		'diameter',
		'the size under 3T',
		({ layers }, { diameter }) => off(down(3 * most(layers), 32), diameter, fraction),
		'diameter.down',
		'diameter.nearest'
	),
	write.common(
		'threeT',
		'twice the thickest and up, carried through the sheet',
		(given, right) => carried(given, by(2 * most(given.layers)), right),
		'twoT'
	),
	write.common(
		'diameter',
		'a size too large, carried through the sheet',
		(given, right) => carried(given, { threeT: right.threeT, D: right.diameter + 1 / 32 }, right),
		'diameter.oneMore'
	),
	write.common(
		'threeT',
		'by the thinnest layer, carried through the sheet',
		(given, right) => carried(given, by(3 * Math.min(...given.layers)), right),
		'thinnest'
	),
	write.common(
		'needed',
		'the stack alone',
		({ layers }, right) => lengthBy(sum(layers), right),
		atA('needed', 'noShank')
	),
	write.common(
		'needed',
		'the thickest layer alone for the grip',
		({ layers }, right) => lengthBy(most(layers) + 1.5 * right.diameter, right),
		atA('grip', 'oneLayer')
	),
	common(
		'length',
		'down to the sixteenth below',
		({ layers }, { diameter, length }) =>
			off(down(sum(layers) + 1.5 * diameter, 16), length, dash16),
		'length.down',
		'length.nearest'
	),
	write.common(
		'needed',
		'1D for the shop head',
		({ layers }, right) => lengthBy(sum(layers) + right.diameter, right),
		'oneD'
	),
	rare(
		'length',
		'a size more, to be sure',
		(_, { length }) => dash16(length + 1 / 16),
		'length.oneMore'
	),
	write.rare(
		'needed',
		'2D for the shop head',
		({ layers }, right) => lengthBy(sum(layers) + 2 * right.diameter, right),
		'twoD'
	),
	common(
		'lengthB',
		'the length at A taken at B too',
		(_, { length, lengthB }) => off(length, lengthB, dash16),
		twoOnly('other-step:length'),
		twoOnly('lengthB.oneMore')
	),
	common(
		'final',
		'the nominal size',
		(_, { diameter, final }) => off(diameter, final, fraction),
		'nominal'
	),
	common(
		'final',
		'No. 30, as always',
		(_, { final }) => off(0.1285, final, () => '#30'),
		'rowAbove',
		'rowBelow',
		'no30ForFinal'
	),
	rare(
		'final',
		'1/64 over the rivet',
		(_, { diameter, final }) => off(diameter + 1 / 64, final, fraction),
		'sixtyFourthOver'
	),
	common(
		'preferred',
		'the bare 2D',
		(_, { diameter, preferred }) => off(2 * diameter, preferred, fraction),
		'nothingAdded'
	),
	common(
		'preferred',
		'2.5D, as for a flush head',
		(_, { diameter, preferred }) => off(2.5 * diameter, preferred, fraction),
		'flushForPreferred'
	),
	rare(
		'preferred',
		'millimetres, typed without the unit',
		(_, { preferred }) => bareMillimetres(preferred),
		'unit'
	),
	common(
		'count',
		'the edges not kept clear, in all of the row',
		(given, right) => rowOf(given, runOf(given, 0), right),
		'noMargin'
	),
	common(
		'count',
		'one edge only kept clear, in all of the row',
		(given, right) => rowOf(given, runOf(given, right.preferred), right),
		'oneMargin'
	),
	common(
		'count',
		'spaces for rivets',
		(_, { count }) => number(count - 1),
		'spacesForRivets',
		'spacesDown'
	),
	common(
		'pitch',
		'the greatest pitch as it stands',
		({ greatestPitch = 0 }, { pitch }) => off(greatestPitch, pitch, fraction),
		'pitchNotDivided'
	),
	common(
		'pitch',
		'the run by the rivets',
		(given, { count, pitch, preferred }) => off(runOf(given, 2 * preferred) / count, pitch),
		'byRivets'
	),
	common(
		'pitch',
		'to the nearest sixteenth',
		(_, { pitch }) => off(nearest(pitch, 16), pitch, fraction),
		'pitchToSixteenths',
		'rounding'
	),
	rare(
		'pitch',
		'two digits changed places',
		(_, { pitch }) => swapped(pitch, decimal, 1),
		'digits'
	),
	common(
		'total',
		'one row only',
		({ count: told }, { count, total }) => off(told ?? count, total, number),
		'oneRow',
		({ count }) => (count === undefined ? 'other-step:count' : '')
	),
	common(
		'total',
		'the spaces between the rows counted',
		({ rows }, { total }) => off((total / rows) * (rows - 1), total, number),
		'oneRowLess'
	),
	rare(
		'total',
		'rows and rivets added',
		({ rows }, { total }) => off(total / rows + rows, total, number),
		'added'
	)
];

function dash16(length: number): string {
	return dash(length * 16);
}
