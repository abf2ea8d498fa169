import { rulesOf } from '../rule.ts';
import { decimal, number, off, swapped } from '../typed.ts';

interface Given {
	readonly length: number;
	readonly width: number;
	readonly T: number;
	readonly alloy: string;
}

interface Right {
	readonly density: number;
	readonly weight: number;
}

const { common, rare } = rulesOf<Given, Right>('sheet-weight');

/** Nominal densities, lb/in³, of the Aluminum Association; steel as a trap. */
const densities: Readonly<Record<string, number>> = {
	'1100': 0.098,
	'2014': 0.101,
	'2024': 0.1,
	'3003': 0.099,
	'5052': 0.097,
	'6061': 0.098,
	'7075': 0.101
};

const steel = 0.283;

const volume = ({ length, width, T }: Given): number => length * width * T;
const pounds = (value: number): string => value.toFixed(2);
const rough = (value: number): string => value.toFixed(1);

/** Far enough from the right weight to be another one: half a percent. */
const other = (wrong: number, right: number, way = pounds): string | null =>
	Math.abs(wrong / right - 1) < 0.005 ? null : off(wrong, right, way);

/** The density of the alloy so many rows further down the table. */
function rowBeside({ alloy }: Given, rows: number): number {
	const names = Object.keys(densities);
	const at = names.indexOf(alloy.slice(0, 4)) + rows;
	return densities[names[at] ?? ''] ?? Number.NaN;
}

/** The slip of the density so many rows further down. */
const rowTaken =
	(rows: number) =>
	(given: Given): string =>
		slipOf.get(rowBeside(given, rows)) ?? '';

const slipOf = new Map([
	[0.1, 'densityOf2024'],
	[0.097, 'densityOf5052'],
	[0.101, 'densityOf2014'],
	[0.099, 'densityOf3003'],
	[0.098, 'densityOf1100']
]);

export const rules = [
	rare(
		'weight',
		'the whole stock sheet that the piece is cut from',
		(given, { weight }) =>
			given.length < 96 && given.width < 48
				? other(volume({ ...given, length: 96, width: 48 }) * rowBeside(given, 0), weight)
				: null,
		'sheet48by96'
	),
	common(
		'weight',
		'the volume, no density',
		(given, { weight }) => other(volume(given), weight),
		'noDensity'
	),
	common(
		'weight',
		'the area, no thickness',
		({ length, width }, { density, weight }) => other(length * width * density, weight),
		'noThickness'
	),
	common(
		'weight',
		'0.1 for every alloy',
		(given, { weight }) => other(volume(given) * 0.1, weight),
		'densityOf2024'
	),
	common(
		'weight',
		'the density of the next row',
		(given, { weight }) => other(volume(given) * rowBeside(given, 1), weight),
		rowTaken(1)
	),
	common(
		'weight',
		'the density of the row before',
		(given, { weight }) => other(volume(given) * rowBeside(given, -1), weight),
		rowTaken(-1)
	),
	common(
		'weight',
		'the point in the thickness: ten times too thick',
		(_, { weight }) => other(weight * 10, weight),
		'digits'
	),
	common(
		'weight',
		'the point in the density: ten times too light',
		(_, { weight }) => other(weight / 10, weight),
		'digits'
	),
	rare(
		'weight',
		'a hundred times too heavy: the sheet in hundredths',
		(_, { weight }) => other(weight * 100, weight, rough),
		'digits'
	),
	common(
		'weight',
		'the sheet in feet, the thickness in inches',
		(_, { weight }) => off(weight / 144, weight, decimal),
		'bothSidesInFeet'
	),
	rare(
		'weight',
		'one side in feet',
		(_, { weight }) => other(weight / 12, weight),
		'oneSideInFeet'
	),
	rare('weight', 'in kilograms', (_, { weight }) => other(weight * 0.45359237, weight), 'unit'),
	rare(
		'weight',
		'sides added, not multiplied',
		({ length, width, T }, { density, weight }) =>
			off((length + width) * T * density, weight, decimal),
		'sidesAdded'
	),
	rare(
		'weight',
		'the density of steel',
		(given, { weight }) => other(volume(given) * steel, weight),
		'densityOfSteel'
	),
	rare(
		'weight',
		'divided by the density',
		(given, { density, weight }) => other(volume(given) / density, weight, rough),
		'divided'
	),
	rare('weight', 'the next gauge up', (given, { density, weight }) =>
		given.T === 0.032
			? other(volume({ ...given, T: 0.04 }) * density, weight)
			: given.T === 0.04
				? other(volume({ ...given, T: 0.05 }) * density, weight)
				: null
	),
	common(
		'weight',
		'to the whole pound',
		(_, { weight }) =>
			Math.abs(Math.round(weight) / weight - 1) < 0.02 ? null : number(Math.round(weight)),
		'rounding'
	),
	rare(
		'weight',
		'two digits changed places',
		(_, { weight }) => {
			const [tens = '', ones = '', ...rest] = weight.toFixed(2);
			return weight < 10 || tens === ones ? null : [ones, tens, ...rest].join('');
		},
		'digits'
	),
	rare(
		'weight',
		'the width squared',
		({ width, T }, { density, weight }) => other(width * width * T * density, weight),
		'widthTwice'
	),
	rare(
		'weight',
		'the thickness left to 0.03: one digit is enough',
		(given, { density, weight }) =>
			other(volume({ ...given, T: Math.floor(given.T * 100 + 1e-9) / 100 }) * density, weight),
		'rounding'
	),
	rare('weight', 'two mistakes: 0.1 for every alloy, and the point', (given, { weight }) =>
		other(volume(given), weight)
	),
	rare('weight', 'two mistakes: next row, and the point', (given, { weight }) =>
		other(volume(given) * rowBeside(given, 1) * 10, weight)
	),
	common(
		'density',
		'0.1 for every alloy',
		(_, { density }) => off(0.1, density, number),
		'densityOf2024'
	),
	common(
		'density',
		'the next row',
		(given, { density }) => off(rowBeside(given, 1), density, number),
		rowTaken(1)
	),
	common(
		'density',
		'the row before',
		(given, { density }) => off(rowBeside(given, -1), density, number),
		rowTaken(-1)
	),
	common(
		'density',
		'the point one place too far right',
		(_, { density }) => off(density * 10, density, number),
		'digits'
	),
	rare(
		'density',
		'the point one place too far left',
		(_, { density }) => off(density / 10, density, number),
		'digits'
	),
	rare('density', 'that of steel', () => `${steel}`, 'densityOfSteel'),
	rare(
		'density',
		'two digits changed places',
		(_, { density }) => swapped(density, (value) => value.toFixed(3), 1),
		'digits'
	),
	rare(
		'density',
		'that of 7075, the strongest',
		(_, { density }) => off(0.101, density, number),
		'densityOf2014'
	),
	common(
		'density',
		'pounds a cubic foot',
		(_, { density }) => rough(density * 1728),
		'unit',
		'perCubicFoot'
	),
	rare(
		'density',
		'the weight in its field',
		(_, { weight }) => pounds(weight),
		'other-step:weight'
	),
	common(
		'density',
		'the next row, carried on correctly',
		(given, { density }) => {
			const wrong = off(rowBeside(given, 1), density, number);
			return wrong && { density: wrong, weight: pounds(volume(given) * rowBeside(given, 1)) };
		},
		rowTaken(1)
	),
	common(
		'density',
		'0.1 for every alloy, carried on correctly',
		(given, { density }) =>
			off(0.1, density) && { density: '.1', weight: pounds(volume(given) * 0.1) },
		'densityOf2024'
	),
	common(
		'density',
		'ten times the density, carried on correctly',
		(given, { density }) => ({
			density: number(density * 10),
			weight: pounds(volume(given) * density * 10)
		}),
		'digits'
	),
	common(
		'weight',
		'density right, the weight ten times too much',
		(_, { density, weight }) => ({
			density: number(density),
			weight: pounds(weight * 10)
		}),
		'digits'
	),
	common(
		'weight',
		'density right, the volume typed',
		(given, { density }) => ({
			density: number(density),
			weight: pounds(volume(given))
		}),
		'noDensity'
	),
	rare(
		'density',
		'each in the field of the other',
		(_, { density, weight }) => ({
			density: pounds(weight),
			weight: number(density)
		}),
		'other-step'
	)
];
