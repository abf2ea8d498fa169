import { unit as mathjsUnit, type Unit } from 'mathjs';
import { expect, test } from 'vitest';
import { ratio } from '../../../../src/lib/engine/quantity/exact.ts';
import '../../../../src/lib/engine/quantity/kinds/all.ts';
import { roundingIn, unitSlipIn } from '../../../../src/lib/engine/quantity/kinds/find-mistakes.ts';
import { length } from '../../../../src/lib/engine/quantity/kinds/length.ts';
import { listOf } from '../../../../src/lib/engine/quantity/kinds/list.ts';
import { load } from '../../../../src/lib/engine/quantity/kinds/load.ts';
import { measured } from '../../../../src/lib/engine/quantity/kinds/measured.ts';
import { carried } from '../../../../src/lib/engine/quantity/kinds/rounding.ts';
import { weight } from '../../../../src/lib/engine/quantity/kinds/weight.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';
import { dimension } from '../../../../src/lib/engine/quantity/units.ts';
import { evaluate } from '../../../../src/lib/engine/solver/evaluate.ts';
import { given } from '../../../../src/lib/engine/solver/given.ts';
import { textAt } from '../../../../src/lib/engine/solver/show.ts';
import { method, slip, step } from '../../../../src/lib/engine/solver/write.ts';
import { taskOf, verdictsOn } from '../../marking/typed-answers.ts';
import { compiledHere } from '../../solver/compile-here.ts';

await loadReader();

/** A kind that nothing else knows: all that there is of it stands here. */
const torque = measured({
	id: 'torque',
	dimension: dimension({
		name: 'torque',
		noun: 'a torque',
		unit: 'lb-in',
		formula: 'lbf in',
		units: [
			['lb·in', 1n, 1n, 'lb·in lb-in in-lb in·lb'],
			['lb·ft', 12n, 1n, 'lb·ft lb-ft ft-lb ft·lb']
		]
	}),
	noun: 'a torque',
	hint: 'Pound-inches or pound-feet.',
	example: '25 lb-in',
	places: [0, 1],
	fine: 10,
	mistakes: {
		units: [{ id: 'feet', factor: ratio(12n), says: 'That is in pound-feet.' }],
		coarse: [1, 1 / 10]
	}
});

function entryOf(text: string, kind = torque) {
	const reading = kind.read(text);
	if (reading.state !== 'read') throw new Error(`not read: ${text}`);
	return reading;
}

test.each([
	['25', 25, '25 lb·in'],
	['25 in-lb', 25, '25 lb·in'],
	['25 lb·in', 25, '25 lb·in'],
	['22.5 lb-in', 22.5, '22.5 lb·in'],
	['1 1/2 ft-lb', 18, '1 1/2 lb·ft = 18 lb·in']
])('%s is read', (text, value, said) => {
	const reading = entryOf(text);
	expect(reading.value.valueOf()).toBe(value);
	expect(reading.said).toBe(said);
});

test('arithmetic is worked out', async () => {
	expect(await torque.work('12.5*2')).toMatchObject({ state: 'read', said: '= 25 lb·in' });
});

test.each([
	['5 mm', '5 mm is a length; a torque is wanted here. Write it like 25 lb-in.'],
	['5 nm', '“nm” is not a unit used here. Write it like 25 lb-in.'],
	['tight', 'That does not read as a torque. Write it like 25 lb-in.']
])('%s is refused', (text, why) => {
	expect(torque.read(text)).toEqual({ state: 'unread', why });
});

test('both edges of the tolerance are inside', () => {
	const half = ratio(1n, 2n);
	const judged = (text: string) => torque.judge(entryOf(text), 25, half).is;
	expect(['24.4', '24.5', '25', '25.5', '25.6'].map(judged)).toEqual([
		'off',
		'right',
		'right',
		'right',
		'off'
	]);
});

test('it is written, exported and hinted', () => {
	expect(torque.write(22.5)).toBe('22.5 lb·in');
	expect(torque.write(22.5, 'mm')).toBe('22.5 lb·in');
	expect(torque.mathml(22.5)).toBe('<mn>22.5</mn>');
	expect(torque.plain(0.1 + 0.2)).toEqual({ number: 0.3, unit: 'lb-in' });
	expect(torque.hint).toBe('Pound-inches or pound-feet.');
});

test('what may go wrong in it is found', () => {
	expect(unitSlipIn(torque, entryOf('2.5'), 30)?.says).toBe('That is in pound-feet.');
	expect(unitSlipIn(torque, entryOf('2.6'), 30)).toBeNull();
	expect(roundingIn(torque, entryOf('23'), 22.7)).toEqual({ how: 'end' });
	expect(roundingIn(torque, entryOf('22.7'), 22.77)).toEqual({ how: 'cut' });
	expect(carried(torque, 22.77)).toBeCloseTo(22.8, 12);
	expect(carried(length, 22.7777)).toBeCloseTo(22.778, 12);
});

test('a list of it is read and written', () => {
	const torques = listOf(torque);
	expect(torques.read('20; 25 lb-in')).toMatchObject({ said: '20 lb·in; 25 lb·in' });
	expect(torques.read('20, 25 lb-in')).toMatchObject({ said: '20 lb·in; 25 lb·in' });
	expect(torques.write([20, 25])).toBe('20, 25 lb·in');
});

test('formulas can check its dimension: a load times a length, and no weight times one', () => {
	const base = (kind: { dimension: { formula: string | null } }) =>
		mathjsUnit(`1 ${kind.dimension.formula ?? ''}`);
	const times = (one: Unit, other: Unit) => one.multiply(other);
	expect(times(base(load), base(length)).equalBase(base(torque))).toBe(true);
	expect(times(base(weight), base(length)).equalBase(base(torque))).toBe(false);
});

const wrench = (formula: string) =>
	method({
		id: 'made-up-torque',
		title: 'Torque at an arm',
		given: { arm: given(length, 'Arm') },
		steps: {
			torque: step(formula, 'Torque', {
				kind: torque,
				tolerance: { amount: '1/2', why: 'A wrench is read to one.' },
				slips: { half: slip('5 lbf * arm / 2', 'Half the arm.') }
			})
		}
	});

test('a method may end in it: worked, written, marked and explained', async () => {
	const made = compiledHere(wrench('5 lbf * arm'));
	expect(evaluate(made, { arm: 6 }).torque).toBe(30);
	expect(textAt(made, 'torque', 30)).toBe('30 lb·in');
	const task = await taskOf('RT', made, { arm: 6 });
	const marked = (text: string) => verdictsOn(task, { torque: text }).torque;
	expect(marked('2.5 ft-lb')).toEqual({ kind: 'accept', carried: false });
	expect(marked('30.4')).toEqual({ kind: 'accept', carried: false });
	expect(marked('15')).toEqual({ kind: 'rework', cause: { kind: 'slip', slips: ['half'] } });
	expect(marked('2.5')).toEqual({ kind: 'rework', cause: { kind: 'unit', unit: 'feet' } });
});

test('a formula of another dimension is refused', () => {
	expect(() => compiledHere(wrench('arm + 1 in'))).toThrow(
		'made-up-torque.torque: a torque is wanted, and the formula gives a length'
	);
});
