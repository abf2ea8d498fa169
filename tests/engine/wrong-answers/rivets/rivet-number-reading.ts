import { rulesOf, type Typed } from '../rule.ts';
import { decimal, fraction, number, off, swapped } from '../typed.ts';

interface Given {
	readonly number: string;
}

interface Right {
	readonly head: string;
	readonly alloy: string;
	readonly diameterDash: number;
	readonly lengthDash: number;
	readonly diameter: number;
	readonly length: number;
}

const { common, rare } = rulesOf<Given, Right>('rivet-number-reading');

/** The two numbers behind the letters: `MS20470AD4-9` has 4 and 9. */
function dashes(text: string): { readonly first: number; readonly second: number } {
	const [, first = '', second = ''] = /(\d+)-(\d+)$/.exec(text) ?? [];
	return { first: Number(first), second: Number(second) };
}

/** Another choice than the right one. */
const choice = (chosen: string, right: string): string | null => (chosen === right ? null : chosen);

const alloyFor =
	(right: string, wrong: string) =>
	(_: Given, { alloy }: Right) =>
		alloy === right ? wrong : null;

const both = (diameter: number, length: number): Typed => ({
	diameter: fraction(diameter),
	length: fraction(length)
});

/** With head and alloy too, right unless named. */
const four = (right: Right, wrong: Partial<Right>): Typed => {
	const { head, alloy, diameter, length } = { ...right, ...wrong };
	return { head, alloy, ...both(diameter, length) };
};

export const rules = [
	common(
		'diameter',
		'the number itself, as it stands',
		({ number: text }) => `${dashes(text).first}`,
		'unit'
	),
	common(
		'diameter',
		'the first dash number over 16',
		({ number: text }, { diameter }) => off(dashes(text).first / 16, diameter, fraction),
		'diameterIn16ths'
	),
	rare(
		'diameter',
		'the first dash number over 8',
		({ number: text }, { diameter }) => off(dashes(text).first / 8, diameter, fraction),
		'diameterIn8ths'
	),
	rare(
		'diameter',
		'the first dash number over 64',
		({ number: text }, { diameter }) => off(dashes(text).first / 64, diameter, fraction),
		'diameterIn64ths'
	),
	rare(
		'diameter',
		'the first dash number as tenths',
		({ number: text }, { diameter }) => off(dashes(text).first / 10, diameter, decimal),
		'diameterInTenths'
	),
	common(
		'diameter',
		'the second number for the diameter',
		({ number: text }, { diameter }) => off(dashes(text).second / 32, diameter, fraction),
		'lastForDiameter'
	),
	rare(
		'diameter',
		'the second number over 16: the length',
		(_, { diameter, length }) => off(length, diameter, fraction),
		'lengthForSize',
		'other-step:length',
		'diameterIn16ths+lastForDiameter'
	),
	rare(
		'diameter',
		'two digits of the decimal changed places',
		(_, { diameter }) => swapped(diameter, decimal, 1),
		'digits'
	),
	rare(
		'diameter',
		'one rivet smaller: counts from 2 as the first',
		(_, { diameter }) => off(diameter - 1 / 32, diameter, fraction),
		'diameterOneUnder'
	),
	common(
		'diameter',
		'the dash number in millimetres',
		({ number: text }) => `${dashes(text).first} mm`,
		'diameterInMm'
	),
	common(
		'length',
		'the second dash number over 32',
		({ number: text }, { length }) => off(dashes(text).second / 32, length, fraction),
		'lengthIn32nds'
	),
	common(
		'length',
		'the second dash number over 8',
		({ number: text }, { length }) => off(dashes(text).second / 8, length, fraction),
		'lengthIn8ths'
	),
	rare(
		'length',
		'the second dash number over 64',
		({ number: text }, { length }) => off(dashes(text).second / 64, length, fraction),
		'lengthIn64ths'
	),
	common(
		'length',
		'the second dash number as tenths',
		({ number: text }, { length }) => off(dashes(text).second / 10, length, number),
		'lengthInTenths'
	),
	common(
		'length',
		'the first number for the length',
		({ number: text }, { length }) => off(dashes(text).first / 16, length, fraction),
		'firstForLength'
	),
	rare(
		'length',
		'the diameter typed for the length',
		(_, { diameter, length }) => off(diameter, length, fraction),
		'other-step:diameter',
		'firstForLength+lengthIn32nds'
	),
	rare(
		'length',
		'1.5 D taken off: the grip it is good for',
		(_, { diameter, length }) => off(length - 1.5 * diameter, length, fraction),
		'gripForLength'
	),
	rare(
		'length',
		'the dash number in millimetres',
		({ number: text }) => `${dashes(text).second} mm`,
		'lengthInMm'
	),
	rare(
		'length',
		'one sixteenth out when reducing the fraction',
		(_, { length }) => off(length + 1 / 16, length, fraction),
		'lengthOneOver'
	),
	rare('length', 'both numbers read as one: 4-9 over 64', ({ number: text }, { length }) => {
		const { first, second } = dashes(text);
		return off(Number(`${first}${second}`) / 64, length, fraction);
	}),
	common(
		'head',
		'the numbers of the two heads mixed up',
		(_, { head }) => choice(head === 'universal' ? 'countersunk' : 'universal', head),
		'universalHead',
		'countersunkHead'
	),
	common('alloy', 'AD taken for 2024, the usual sheet', alloyFor('2117', '2024'), 'alloy2024'),
	common('alloy', 'AD taken for 2017', alloyFor('2117', '2017'), 'alloy2017'),
	common('alloy', 'AD taken for 1100: it begins with A', alloyFor('2117', '1100'), 'alloy1100'),
	common('alloy', 'D taken for 2024', alloyFor('2017', '2024'), 'alloy2024'),
	common('alloy', 'D taken for 2117', alloyFor('2017', '2117'), 'alloy2117'),
	rare('alloy', 'DD taken for 2017', alloyFor('2024', '2017'), 'alloy2017'),
	common('alloy', 'A taken for 2117, the usual rivet', alloyFor('1100', '2117'), 'alloy2117'),
	common('alloy', 'B taken for 2117', alloyFor('5056', '2117'), 'alloy2117'),
	rare('alloy', 'B taken for 1100', alloyFor('5056', '1100'), 'alloy1100'),
	common(
		'diameter',
		'both numbers over 16',
		({ number: text }, right) => {
			const { first, second } = dashes(text);
			return off(first / 16, right.diameter) && both(first / 16, second / 16);
		},
		'diameterIn16ths'
	),
	common(
		'length',
		'both numbers over 32',
		({ number: text }) => {
			const { first, second } = dashes(text);
			return both(first / 32, second / 32);
		},
		'lengthIn32nds'
	),
	common(
		'diameter',
		'the denominators changed places',
		({ number: text }) => {
			const { first, second } = dashes(text);
			return both(first / 16, second / 32);
		},
		'diameterIn16ths',
		'lengthIn32nds'
	),
	common(
		'diameter',
		'the two numbers changed places',
		({ number: text }) => {
			const { first, second } = dashes(text);
			return first * 2 === second ? null : both(second / 32, first / 16);
		},
		'lastForDiameter',
		'firstForLength'
	),
	common(
		'diameter',
		'diameter and length each in the field of the other',
		(_, right) => off(right.length, right.diameter) && both(right.length, right.diameter),
		'other-step',
		'diameterIn16ths+lastForDiameter',
		'firstForLength+lengthIn32nds'
	),
	common(
		'head',
		'the other head, the rest right',
		(_, right) => four(right, { head: right.head === 'universal' ? 'countersunk' : 'universal' }),
		'universalHead',
		'countersunkHead'
	),
	common(
		'alloy',
		'a wrong alloy, the rest right',
		(_, right) => (right.alloy === '2024' ? null : four(right, { alloy: '2024' })),
		'alloy2024'
	),
	rare(
		'alloy',
		'two mistakes: alloy, and the length over 32',
		(_, right) =>
			right.alloy === '2117' ? null : four(right, { alloy: '2117', length: right.length / 2 }),
		'alloy2117',
		'lengthIn32nds'
	)
];
