import { unit as mathjsUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { ratio } from '../../../../src/lib/engine/quantity/exact.ts';
import { dimensions } from '../../../../src/lib/engine/quantity/kinds/all.ts';
import { plainKind } from '../../../../src/lib/engine/quantity/kinds/plain.ts';
import { angle } from '../../../../src/lib/engine/quantity/kinds/angle.ts';
import { choice } from '../../../../src/lib/engine/quantity/kinds/choice.ts';
import { count } from '../../../../src/lib/engine/quantity/kinds/count.ts';
import { density } from '../../../../src/lib/engine/quantity/kinds/density.ts';
import { drill } from '../../../../src/lib/engine/quantity/kinds/drill.ts';
import { fraction } from '../../../../src/lib/engine/quantity/kinds/fraction.ts';
import { in32nds } from '../../../../src/lib/engine/quantity/kinds/in-32nds.ts';
import { length, lengthInFigures } from '../../../../src/lib/engine/quantity/kinds/length.ts';
import { listOf } from '../../../../src/lib/engine/quantity/kinds/list.ts';
import { load } from '../../../../src/lib/engine/quantity/kinds/load.ts';
import { numberPer } from '../../../../src/lib/engine/quantity/kinds/number.ts';
import { partNumber } from '../../../../src/lib/engine/quantity/kinds/part-number.ts';
import { rivetLength } from '../../../../src/lib/engine/quantity/kinds/rivet-length.ts';
import { stress } from '../../../../src/lib/engine/quantity/kinds/stress.ts';
import { weight } from '../../../../src/lib/engine/quantity/kinds/weight.ts';
import { word } from '../../../../src/lib/engine/quantity/kinds/word.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const perInch = numberPer({
	unit: 'rivets per inch',
	spellings: 'rivets/in per-inch',
	example: '1.25 rivets per inch'
});

describe('kinds of number', () => {
	test.each([
		[stress, '38 ksi', 38_000, '38 ksi = 38000 psi'],
		[stress, '38,000 psi', 38_000, '38000 psi'],
		[stress, '41000 lb/in²', 41_000, '41000 psi'],
		[stress, '41000 lb/sq. in.', 41_000, '41000 psi'],
		[stress, '41000 lb/in2', 41_000, '41000 psi'],
		[load, '388', 388, '388 lb'],
		[load, '1,200 lb', 1200, '1200 lb'],
		[load, '388 lb', 388, '388 lb'],
		[load, '388 lbf', 388, '388 lb'],
		[load, '1.2 kip', 1200, '1.2 kip = 1200 lb'],
		[perInch, '1.25', 1.25, '1.25 rivets per inch'],
		[perInch, '1 1/4 rivets per inch', 1.25, '1 1/4 rivets per inch'],
		[perInch, '2 rivets/in', 2, '2 rivets per inch']
	])('$id: %s', (kind, text, value, said) => {
		const reading = kind.read(text);
		expect(reading).toMatchObject({ state: 'read', said });
		expect(reading.state === 'read' && reading.value.valueOf()).toBe(value);
	});

	test.each([
		[load, '5 kg', '5 kg is a weight; a load is wanted here. Write it like 388 lb.'],
		[
			stress,
			'388 lb',
			'388 lb is a weight; a stress is wanted here. Write it like 38000 psi or 38 ksi.'
		],
		[
			perInch,
			'12 rivets',
			'12 rivets is a plain number; a number of rivets per inch is wanted here. Write it like 1.25 rivets per inch.'
		]
	])('$id: %s is refused', (kind, text, why) => {
		expect(kind.read(text)).toEqual({ state: 'unread', why });
	});

	test.each([
		[stress, 38_000, '38000 psi', { number: 38_000, unit: 'psi' }],
		[load, 388, '388 lb', { number: 388, unit: 'lbf' }],
		[perInch, 1.25, '1.25 rivets per inch', { number: 1.25, unit: 'rivets per inch' }],
		[density, 0.101, '0.101 lb/in³', { number: 0.101, unit: 'lb/in3' }],
		[angle, 45, '45°', { number: 45, unit: 'deg' }],
		[weight, 2.5, '2.5 lb', { number: 2.5, unit: 'lb' }],
		[count, 13, '13', { number: 13, unit: '' }]
	])('$id is written and exported', (kind, value, text, plain) => {
		expect(kind.write(value)).toBe(text);
		expect(kind.plain(value)).toEqual(plain);
	});

	test('a number of many digits is still told from its neighbours by what a shop carries', () => {
		const reading = stress.read('54322');
		if (reading.state !== 'read') throw new Error('not read');
		expect(stress.isWritten(reading, 54_321.7)).toBe(true);
		expect(stress.isWritten(reading, 54_323)).toBe(false);
	});
});

describe('a length asked for as the 32nd it is', () => {
	const valueOf = (text: string, unit: 'in' | 'mm' = 'in') => {
		const reading = in32nds.read(text, unit);
		return reading.state === 'read' ? Number(reading.value) : reading.state;
	};

	test.each([
		['5', 5 / 32],
		['5/32', 5 / 32],
		['.156', 0.156],
		['5 in', 5],
		['1 1/32', 33 / 32]
	])('%s is %d in', (text, value) => {
		expect(valueOf(text)).toBe(value);
	});

	test('a bare number of millimetres is no count', () => {
		expect(valueOf('5', 'mm')).toBeCloseTo(5 / 25.4, 9);
	});
});

describe('inside a formula', () => {
	test.each([
		[fraction, 0.375, 'in', '<mfrac><mn>3</mn><mn>8</mn></mfrac>'],
		[fraction, 1.5, 'in', '<mrow><mn>1</mn><mfrac><mn>1</mn><mn>2</mn></mfrac></mrow>'],
		[fraction, 2, 'in', '<mn>2</mn>'],
		[fraction, 0.375, 'mm', '<mn>9.525</mn>'],
		[fraction, 0.3, 'in', '<mn>0.300</mn>'],
		[length, 0.375, 'in', '<mn>0.375</mn>'],
		[rivetLength, 0.3125, 'in', '<mfrac><mn>5</mn><mn>16</mn></mfrac>'],
		[drill, 0.1285, 'in', '<mn>0.1285</mn>']
	] as const)('$id: %d %s', (kind, value, units, mathml) => {
		expect(kind.mathml(value, units)).toBe(mathml);
	});

	test('the nearest 64th stands beside a length that is none', () => {
		expect(length.nearest64(0.72)).toBe('≈ 23/32 in');
		expect(length.nearest64(0.71875)).toBe('');
		expect(length.nearest64(0.72, 'mm')).toBe('');
		expect(angle.nearest64(0.72)).toBe('');
	});
});

describe('words', () => {
	const heads = choice(['universal', 'countersunk', 'A', 'AD']);

	test.each([
		['universal', 'universal'],
		['U', 'universal'],
		[' Counter ', 'countersunk'],
		['a', 'A'],
		['ad', 'AD']
	])('the choice %s', (text, value) => {
		expect(heads.read(text)).toMatchObject({ state: 'read', value });
	});

	test('none of the choices says which there are', () => {
		expect(heads.read('round')).toEqual({
			state: 'unread',
			why: 'Answer with one of: universal, countersunk, A, AD.'
		});
	});

	test('a part number is taken as the standard writes it, other words as they stand', () => {
		expect(partNumber.read('ms 20470 ad 4-5')).toMatchObject({ value: 'MS20470AD4-5' });
		expect(partNumber.read('the long one')).toMatchObject({ value: 'the long one' });
		expect(word.read('ms 20470 ad 4-5')).toMatchObject({ value: 'ms 20470 ad 4-5' });
	});

	test('several words are a list of them', () => {
		const words = listOf(word);
		const reading = words.read('deburr, drill; rivet');
		expect(reading).toMatchObject({ value: ['deburr', 'drill', 'rivet'] });
		if (reading.state !== 'read') throw new Error('not read');
		expect(words.judge(reading, ['deburr', 'drill', 'rivet'], ratio(0n)).is).toBe('right');
		expect(words.judge(reading, ['drill', 'deburr', 'rivet'], ratio(0n)).is).toBe('off');
		expect(words.write(['deburr', 'drill'])).toBe('deburr, drill');
	});
});

describe('a size in figures', () => {
	const nameOnly = 'That is the name of a drill. Write its size, such as 0.128 in.';

	test.each(['#30', 'No. 30', 'letter F', 'drill 30', '30 drill', 'F drill', '#99'])(
		'%s begs the question',
		(text) => {
			expect(lengthInFigures.read(text)).toEqual({ state: 'unread', why: nameOnly });
		}
	);

	test.each(['0.1285', '.1285 in', '1/8', '1/8 drill'])('%s is a size', (text) => {
		expect(lengthInFigures.read(text).state).toBe('read');
	});
});

describe('the dimensions that formulas compute with', () => {
	const computed = dimensions.filter(({ formula }) => formula);

	test('are known by name', () => {
		for (const { name } of dimensions) expect(plainKind(name).dimension.name).toBe(name);
		expect(() => plainKind('torque')).toThrow('no kind has the dimension torque');
	});

	test.each(computed)(
		'$name: a unit that a formula may name is as large as mathjs has it',
		(one) => {
			for (const literal of one.literals) {
				const { size } = one.units.find(({ spellings }) => spellings.includes(literal)) ?? {};
				expect(size?.valueOf()).toBeCloseTo(mathjsUnit(1, literal).toNumber(one.formula ?? ''), 12);
			}
		}
	);

	test('no two of them are the same', () => {
		const bases = computed.map(({ formula }) => mathjsUnit(`1 ${formula ?? ''}`));
		for (const [i, base] of bases.entries()) {
			expect(bases.findIndex((other) => other.equalBase(base))).toBe(i);
		}
	});

	test('a load over an area is a stress, a weight over one is none', () => {
		const over = (unit: string) => mathjsUnit(`1 ${unit} / in^2`);
		expect(over('lbf').equalBase(mathjsUnit('1 psi'))).toBe(true);
		expect(over('lb').equalBase(mathjsUnit('1 psi'))).toBe(false);
	});
});
