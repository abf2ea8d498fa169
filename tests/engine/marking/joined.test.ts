import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../../src/lib/engine/schedule/evidence.ts';
import { panel } from '../solver/panel.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

// Sheets of 0.032 and 0.040 in: 3T is 0.120, so a 1/8 in rivet; grip 0.072, length 5/16; final
// drill No. 30; least edge 1/4, preferred 5/16; the run is 12 - 5/8 = 11 3/8, 12 spaces.
const given = { layers: [0.032, 0.04], head: 'protruding', pieceLength: 12, greatestPitch: 1 };
const asked = ['threeT', 'diameter', 'length', 'final', 'preferred', 'count', 'pitch'];
const task = await taskOf('RL', panel, given, asked);
const right = { kind: 'accept', carried: false };
const carried = { kind: 'accept', carried: true };

describe('a job of five methods', () => {
	test('is right when every part is', () => {
		const typed = { diameter: '1/8', length: '-5', final: '#30', preferred: '5/16', count: '13' };
		for (const verdict of Object.values(verdictsOn(task, { ...typed, pitch: '.948' }))) {
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
