import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../../src/lib/engine/schedule/evidence.ts';
import { panelRows, panelTwoStacks } from '../../../src/lib/engine/families/panel/parts/joined.ts';
import { stepMarks } from '../../../src/lib/engine/sets/step-marks.ts';
import { stepsOf } from '../../../src/lib/engine/tasks/task.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

// Sheets of 0.032 and 0.040 in: 3T is 0.120, so a 1/8 in rivet; grip 0.072, length 5/16; final
// drill No. 30; least edge 1/4, preferred 5/16; the run is 12 - 5/8 = 11 3/8, 12 spaces.
// of at most 1 in and so 13 rivets in each of 3 rows.
const layers = [0.032, 0.04];
const given = { layers, head: 'protruding', rowLength: 12, greatestPitch: 1, rows: 3 };
const asked = ['threeT', 'diameter', 'length', 'final', 'preferred', 'count', 'pitch', 'total'];
const task = await taskOf('PN', panelRows, given, asked);
const right = { kind: 'accept', carried: false };
const carried = { kind: 'accept', carried: true };

describe('a panel of five methods', () => {
	test('is right when every part is', () => {
		const typed = { diameter: '1/8', length: '-5', final: '#30', preferred: '5/16', count: '13' };
		const rest = { pitch: '.948', total: '39' };
		for (const verdict of Object.values(verdictsOn(task, { ...typed, ...rest }))) {
			expect(verdict).toEqual(right);
		}
	});

	// Twice the thickness, 0.080, leads to a 3/32 rivet.
	test('charges a wrong diameter once; what follows from it is carried', () => {
		const typed = { threeT: '.080', diameter: '3/32', length: '1/4', final: '#40' };
		const verdicts = verdictsOn(task, { ...typed, preferred: '1/4', count: '13', pitch: '.958' });
		expect(verdicts.threeT).toEqual({
			kind: 'rework',
			cause: { kind: 'slip', slips: ['twoT'] }
		});
		for (const key of ['diameter', 'length', 'final', 'preferred'])
			expect(verdicts[key], key).toEqual(carried);
		// As many spaces as with the right diameter.
		expect(verdicts.count?.kind).toBe('accept');
		expect(verdicts.pitch).toEqual(carried);
		const found = evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [] });
		expect(found.filter(({ result }) => result === 'wrong')).toEqual([
			{ skill: 'piece/three-t', result: 'wrong', slip: 'twoT' }
		]);
	});

	test('finds a slip of its own in a later part, on the student’s diameter', () => {
		const verdicts = verdictsOn(task, { diameter: '3/32', preferred: '3/16' });
		expect(verdicts.preferred).toEqual({
			kind: 'rework',
			cause: { kind: 'slip', slips: ['nothingAdded'] }
		});
	});

	test('tells two slips in two parts from the last number alone', () => {
		// Four times the thickness: a 3/16 rivet; and its head in the grip: 0.072 + 1.925 × 0.1875.
		expect(verdictsOn(task, { needed: '0.4329375' }).needed).toMatchObject({
			kind: 'rework',
			cause: { kind: 'slip', slips: ['fourT', 'headToo'] }
		});
	});
});

// No rivet is so large: from the diameter on nothing follows from it, and nothing is carried.
test('a diameter that no table holds is wrong, and so is what was worked from it', () => {
	const typed = { diameter: '97.7', length: '97.7', final: '97.7', pitch: '97.7', count: '13' };
	const verdicts = verdictsOn(task, typed);
	for (const key of ['diameter', 'length', 'final', 'pitch']) {
		expect(verdicts[key], key).toEqual({ kind: 'rework', cause: { kind: 'unknown' } });
	}
	expect(verdicts.count).toEqual(right);
});

describe('a panel through two stacks', async () => {
	// With a doubler of 0.040 on the skin of 0.032 and the frame of 0.032: 1/8 in, and 0.104 and 0.064
	// with the shank of 3/16 are 0.2915 and 0.2515, so −5 both; of 0.050: 5/32 in, 0.114 and 0.064
	// with 0.2344 are 0.348 and 0.298, so −6 and −5.
	const two = await taskOf(
		'PN',
		panelTwoStacks,
		{ ...given, layers: [0.05, 0.032, 0.032], layersB: [0.032, 0.032] },
		['diameter', 'length', 'lengthB', 'final', 'total']
	);

	test('has a length for each', () => {
		const typed = { diameter: '5/32', length: '-6', lengthB: '-5', final: '#21', total: '39' };
		for (const verdict of Object.values(verdictsOn(two, typed))) expect(verdict).toEqual(right);
	});

	// By 2T, 0.100, the rivet is 1/8: 0.114 and 0.064 with 3/16 are 0.3015 and 0.2515, −5 both.
	test('carries a wrong diameter into both lengths, and takes the marks of its step alone', () => {
		const typed = { threeT: '0.1', diameter: '1/8', length: '-5', lengthB: '-5', final: '#30' };
		const verdicts = verdictsOn(two, { ...typed, total: '39' });
		expect(verdicts.threeT?.kind).toBe('rework');
		for (const key of ['diameter', 'length', 'final']) expect(verdicts[key], key).toEqual(carried);
		expect(verdicts.lengthB?.kind).toBe('accept');
		const steps = stepMarks(
			two,
			stepsOf(two).map(() => 1),
			verdicts
		).flatMap((row) => row.steps);
		const lost = steps.filter(({ state }) => state === 'lost').map(({ key }) => key);
		expect(lost).toEqual(['threeT']);
	});

	test('tells the stack at A taken at B', () => {
		const typed = { diameter: '5/32', length: '-6', lengthB: '-6', final: '#21', total: '39' };
		expect(verdictsOn(two, typed).lengthB?.kind).toBe('rework');
	});
});
