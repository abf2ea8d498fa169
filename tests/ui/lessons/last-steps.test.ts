import { describe, expect, test } from 'vitest';
import { lessonAttempt, lessonEvidence } from '../../../src/lib/app/lessons/lesson-evidence.ts';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { numberOf } from '../../../src/lib/app/practice/run.ts';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { outcomesOf } from '../../../src/lib/ui/sheet/outcomes.ts';
import {
	fading,
	LastSteps,
	markedSteps,
	saidOf
} from '../../../src/lib/ui/lessons/last-steps.svelte.ts';

const card = cards.find(({ id }) => id === 'setback');
const task = await taskFromNumber(card ? numberOf(card, 2, 7) : '');

function begun(count: number): LastSteps {
	return new LastSteps(task, count, () => 'in');
}

function fill(work: LastSteps, text?: string): void {
	for (const line of work.lines) {
		line.type(text ?? textAt(task.method, line.key, task.right[line.key] ?? ''));
	}
}

test.each([
	[1, [1]],
	[2, [1, 2]],
	[3, [1, 2, 3]],
	[6, [1, 2, 6]]
])('%i steps fade as %j', (steps, counts) => {
	expect(fading(steps)).toEqual(counts);
});

describe('the last steps of a task', () => {
	test('are the reader’s, the others stand worked', () => {
		expect(markedSteps(task)).toEqual(['K', 'setback']);
		expect(begun(1).given).toEqual(['K']);
		expect(begun(1).lines.map(({ key }) => key)).toEqual(['setback']);
		expect(begun(2).given).toEqual([]);
	});

	test('are marked as every answer is, and cost nothing while one is empty', async () => {
		const work = begun(1);
		expect(await work.check()).toBeNull();
		expect(work.lines[0]?.missing).toBe(true);
		fill(work, '7.77 in');
		expect((await work.check())?.accepted).toBe(false);
		expect(work.done).toBe(false);
		fill(work);
		expect((await work.check())?.accepted).toBe(true);
		expect(work.done).toBe(true);
	});
});

test('a number that tells nothing is not sent to steps that stand worked', async () => {
	const work = begun(1);
	fill(work, '7.77 in');
	const verdict = (await work.check())?.verdicts.setback;
	if (!verdict) throw new Error('not checked');
	expect(saidOf(task, verdict, 'setback', 'in')).not.toContain('one by one');
});

test('a wrong setback is bent, and comes out off its lines', async () => {
	const work = begun(1);
	fill(work, '.01');
	const check = await work.check();
	if (!check) throw new Error('not checked');
	const [yours] = outcomesOf(task, check, 'in', false, false);
	expect(yours?.outcome.says).toContain('too long');
});

describe('what a lesson shows', () => {
	test('a right step counts as helped, with the formula on the page', async () => {
		const work = begun(1);
		fill(work);
		const check = await work.check();
		if (!check) throw new Error('not checked');
		expect(lessonEvidence(work, check, [])).toEqual([{ skill: 'piece/setback', result: 'helped' }]);
	});

	test('a wrong one counts as wrong, and once', async () => {
		const work = begun(1);
		fill(work, '7.77 in');
		const check = await work.check();
		if (!check) throw new Error('not checked');
		const skills = lessonEvidence(work, check, []);
		expect(skills).toEqual([{ skill: 'piece/setback', result: 'wrong' }]);
		const facts = lessonAttempt(work, check, { runId: 'one', seconds: 5000, skills });
		expect(facts).toMatchObject({
			byStep: true,
			opened: ['K'],
			typed: { setback: '7.77 in' },
			seconds: 600
		});
		fill(work);
		const again = await work.check();
		if (!again) throw new Error('not checked');
		expect(lessonEvidence(work, again, ['piece/setback'])).toEqual([
			{ skill: 'piece/setback', result: 'helped' }
		]);
	});
});
