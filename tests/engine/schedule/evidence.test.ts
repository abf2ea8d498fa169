import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { exactly } from '../../../src/lib/engine/quantity/exact.ts';
import {
	type CheckNotes,
	evidenceOf,
	givenUp,
	type SkillEvidence
} from '../../../src/lib/engine/schedule/evidence.ts';
import { taskOf, verdictsOn } from '../marking/typed-answers.ts';

// Skin, doubler and frame of 0.050 + 0.051 + 0.063 in with a 1/8 in rivet: grip 0.164, shank
// 0.1875, needed 0.3515, next stocked length 3/8.
const given = { layers: [0.05, 0.051, 0.063], D: 1 / 8 };
const bin = await taskOf('RL', rivetLength, given, ['length']);
// 0.063 + 0.064 + 0.072 in: grip 0.199, which is 1/4 by itself; grip or shank forgotten differ.
const thick = await taskOf('RL', rivetLength, { layers: [0.063, 0.064, 0.072], D: 1 / 8 }, [
	'length'
]);
const steps = await taskOf('RL', rivetLength, given);

/** The evidence of answers as typed, as `step: result` or `step: result (slip)`. */
function shown(
	task: Task,
	typed: Readonly<Record<string, string>>,
	notes: Partial<CheckNotes> = {}
): string[] {
	const verdicts = verdictsOn(task, typed);
	const found = evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [], ...notes });
	return found.map(said).sort();
}

function said({ skill, result, slip }: SkillEvidence): string {
	const [step] = Object.entries(rivetLength.steps).find(([, one]) => one.skill === skill) ?? [
		skill
	];
	return slip === undefined ? `${step}: ${result}` : `${step}: ${result} (${slip})`;
}

describe('at the first try', () => {
	test('a right answer speaks for every step that leads to it', () => {
		expect(shown(bin, { length: '3/8' })).toEqual([
			'grip: right',
			'length: right',
			'needed: right',
			'shank: right'
		]);
	});

	test('and for no other', () => {
		expect(shown(steps, { shank: '.1875' })).toEqual(['shank: right']);
	});

	test('a slip charges its own step and credits the others', () => {
		expect(shown(thick, { length: '1/4' })).toEqual([
			'grip: right',
			'length: right',
			'needed: wrong (noShank)',
			'shank: right'
		]);
	});

	test('two slips together charge two steps', () => {
		// One layer and 2 D: 0.063 + 0.25.
		expect(shown(steps, { needed: '0.313' })).toEqual([
			'grip: wrong (oneLayer)',
			'needed: right',
			'shank: wrong (twoD)'
		]);
	});

	test('a number that nothing explains charges the asked step and says nothing of the rest', () => {
		expect(shown(bin, { length: '1 7/8' })).toEqual(['length: wrong']);
	});

	test('so does one that either of two steps may have caused', () => {
		expect(shown(bin, { length: '5/16' })).toEqual(['length: wrong']);
	});

	test("and another step's result", () => {
		expect(shown(steps, { needed: '0.164' })).toContain('needed: wrong (noShank)');
		expect(shown(steps, { shank: '0.164' })).toEqual(['shank: wrong']);
	});

	test('a unit or a rounding is charged to the asked step, the working was right', () => {
		expect(shown(steps, { needed: '8.928 in' })).toEqual([
			'grip: right',
			'needed: wrong',
			'shank: right'
		]);
		expect(shown(steps, { needed: '0.4' })).toEqual([
			'grip: right',
			'needed: wrong',
			'shank: right'
		]);
	});

	test('opened steps count as helped, right or not', () => {
		const opened = ['grip', 'shank'];
		expect(shown(bin, { length: '3/8' }, { opened })).toEqual([
			'grip: helped',
			'length: right',
			'needed: right',
			'shank: helped'
		]);
		expect(shown(thick, { length: '1/4' }, { opened })).toEqual([
			'grip: helped',
			'length: right',
			'needed: wrong (noShank)',
			'shank: helped'
		]);
	});

	test('asking for the working charges what was asked', () => {
		expect(givenUp(bin).map(said)).toEqual(['length: wrong']);
		expect(givenUp(steps).map(said)).toHaveLength(4);
	});
});

describe('several answers', () => {
	const carried = { grip: '0.063', needed: '0.2505', length: '5/16' };

	test('what follows from an earlier wrong one is right, and the slip is charged once', () => {
		expect(shown(steps, { shank: '.1875', ...carried })).toEqual([
			'grip: wrong (oneLayer)',
			'length: right',
			'needed: right',
			'shank: right'
		]);
	});

	test('a carried answer speaks for its own step only', () => {
		expect(shown(steps, carried)).toEqual([
			'grip: wrong (oneLayer)',
			'length: right',
			'needed: right'
		]);
	});

	test('a step answered right is not charged with a slip that a later number looks like', () => {
		// The length of one layer, though the grip is right.
		const found = shown(steps, { grip: '0.164', length: '1/4' });
		expect(found).toContain('grip: right');
		expect(found.filter((one) => one.startsWith('grip: wrong'))).toEqual([]);
	});
});

describe('step by step', () => {
	const byStep = true;

	test('an answer speaks for its own step only', () => {
		expect(shown(steps, { length: '3/8' }, { byStep })).toEqual(['length: right']);
	});

	test('a slip in a step that was left empty is still charged', () => {
		expect(shown(thick, { length: '1/4' }, { byStep })).toEqual([
			'length: right',
			'needed: wrong (noShank)'
		]);
	});

	test('a step that an earlier check accepted shows nothing new', () => {
		const typed = { grip: '0.164', shank: '.1875' };
		expect(shown(steps, typed, { byStep, settled: ['grip'] })).toEqual(['shank: right']);
	});
});

describe('at a second try', () => {
	const charged = ['rivet-length/needed'];

	test('only what was charged before is looked at, and counts as helped', () => {
		expect(shown(bin, { length: '3/8' }, { charged })).toEqual(['needed: helped']);
	});

	test('wrong again shows nothing new', () => {
		expect(shown(bin, { length: '3/16' }, { charged })).toEqual([]);
		expect(shown(bin, { length: '1 7/8' }, { charged })).toEqual([]);
	});

	test('another slip is not charged, but what was put right counts', () => {
		// The length was not rounded up, but a shank was added.
		expect(shown(bin, { length: '0.3515' }, { charged })).toEqual(['needed: helped']);
	});
});

test('every slip of every kind of task is charged to its step, where marking names it', async () => {
	let charged = 0;
	for (const family of await loadFamilies()) {
		for (const level of levels) charged += slipsCharged(drawTask(family, level, 7));
	}
	expect(charged).toBeGreaterThan(300);
});

/** How many of a task's slips marking names; evidence must charge each to its step alone. */
function slipsCharged(task: Task): number {
	const { method } = task;
	const entered = [...task.slips].flatMap(([id, values]) =>
		task.drawn.asked.map((key) => ({ id, key, value: values[key] }))
	);
	const named = entered.filter(({ id, key, value }) => {
		if (typeof value !== 'number') return false;
		const verdicts = mark(task, { [key]: { value: exactly(value), grain: 5e-7 } });
		const verdict = verdicts[key];
		if (verdict?.kind !== 'rework' || verdict.cause.kind !== 'slip') return false;
		if (verdict.cause.slips.join() !== id) return false;
		const found = evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [] });
		const wrong = found.filter(({ result }) => result === 'wrong');
		const skill = method.steps[method.slips[id]?.step ?? '']?.skill;
		const slip = method.slips[id]?.id;
		expect(wrong, `${task.number} ${id}`).toEqual([{ skill, result: 'wrong', slip }]);
		return true;
	});
	return named.length;
}
