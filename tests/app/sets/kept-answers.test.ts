import { expect, test } from 'vitest';
import {
	afterCheck,
	afterMarks,
	answerIn,
	readKeptAnswer,
	takeUp
} from '../../../src/lib/app/sets/kept-answers.ts';
import { handedInAttempt } from '../../../src/lib/app/sets/set-attempts.ts';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import { markAnswer } from '../../../src/lib/engine/sets/mark-answer.ts';
import { noAnswer } from '../../../src/lib/engine/sets/hand-in.ts';
import { questionFor } from '../../../src/lib/engine/sets/open-set.ts';
import { optionEntry } from '../../../src/lib/engine/sets/chosen-option.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { TaskWork } from '../../../src/lib/ui/sheet/task-work.svelte.ts';

await loadReader();
const set = await composeSet(plainTerms('Week 6'), [readWish('RL2')]);
const task = await taskFromNumber(set.tasks[0]?.number ?? '');
const own = { place: 1, task, marks: [1, 1, 1, 1], question: null };
const begun = () => new TaskWork(task, () => 'in');

/** Types into the fields, the length needed and the rivet that is taken. */
function typed(length: string, needed = '.3'): TaskWork {
	const work = begun();
	work.lines[0]?.type(needed);
	work.lines[1]?.type(length);
	return work;
}

test('an entry with two meanings is taken up with the one that was picked', () => {
	const work = typed('5');
	expect(work.lines[1]?.reading.state).toBe('which');
	work.lines[1]?.pick(1);
	const answer = answerIn(work, noAnswer(1, 'in'), 'in');
	expect(answer).toMatchObject({ entries: { needed: '.3', length: '5' }, picked: { length: 1 } });
	const kept = readKeptAnswer(JSON.stringify(answer));
	expect(kept).toEqual(answer);
	const again = begun();
	if (kept) takeUp(again, kept);
	expect(again.lines[1]?.reading).toEqual(work.lines[1]?.reading);
	again.lines[1]?.type('6');
	expect(answerIn(again, answer, 'in').picked).toEqual({});
});

test('what was opened stays opened, though it is shut again', () => {
	const work = typed('5/16');
	work.openStep();
	const answer = answerIn(work, noAnswer(1, 'in'), 'in');
	expect(answer.opened).toEqual(work.stepKeys.slice(0, 1));
	expect(answerIn(typed('3/8'), answer, 'in').opened).toEqual(answer.opened);
	const again = begun();
	takeUp(again, answer);
	expect(again.opened).toBe(1);
});

test('charts that were looked at are handed in and go to the log', async () => {
	const work = typed('5/16');
	work.lookAt('rivet-dashes');
	const answer = answerIn(work, { ...noAnswer(1, 'in'), charts: ['k-chart'] }, 'in');
	expect(answer.charts).toEqual(['k-chart', 'rivet-dashes']);
	const attempt = await handedInAttempt(own, answer, '0000-0000');
	expect(attempt?.charts).toEqual(answer.charts);
	const without = await handedInAttempt(own, { ...answer, charts: [] }, '0000-0000');
	expect(attempt).toEqual({ ...without, charts: answer.charts });
});

test('step by step, the entries of steps are taken up at their steps', () => {
	const work = begun();
	work.byStep = true;
	for (const line of work.lines) line.type('0.25 in');
	const answer = answerIn(work, noAnswer(1, 'in'), 'in');
	const again = begun();
	takeUp(again, answer);
	expect(again.byStep).toBe(true);
	expect(again.lines.map(({ text }) => text)).toEqual(work.lines.map(({ text }) => text));
});

test('a very long entry is cut, and what is no answer is none', () => {
	expect(answerIn(typed('9'.repeat(500)), noAnswer(1, 'in'), 'in').entries.length).toHaveLength(
		200
	);
	for (const text of [null, '', '{', '{"place":1}', '[]']) expect(readKeptAnswer(text)).toBeNull();
});

test('what is handed in shows what the check would have shown; what is not whole shows nothing', async () => {
	const right = answerIn(typed('99 in'), { ...noAnswer(1, 'in'), seconds: 4000 }, 'in');
	const attempt = await handedInAttempt(own, right, 'SET1-0000');
	expect(attempt).toMatchObject({ task: task.number, runId: 'SET1-0000', seconds: 600 });
	expect(attempt?.skills.some(({ result }) => result === 'wrong')).toBe(true);
	expect(await handedInAttempt(own, noAnswer(1, 'in'), 'SET1-0000')).toBeNull();
	const question = questionFor(task);
	if (!question) throw new Error('no question');
	const chosen = optionEntry(question, question.right);
	const entries = { [question.key]: chosen };
	const of = await handedInAttempt({ ...own, question }, { ...right, entries }, 'SET1-0000');
	expect(of?.typed).toEqual(entries);
	expect(of?.skills.every(({ result }) => result === 'right')).toBe(true);
	expect(of?.skills.length).toBeGreaterThan(0);
});

test('what a check told to be wrong is handed in with the answer, whatever stands there then', async () => {
	const work = typed('15/16 in');
	const wrong = await work.check();
	expect(wrong?.accepted).toBe(false);
	const told = wrong && afterCheck(answerIn(work, noAnswer(1, 'in'), 'in'), wrong);
	expect(told?.told).toEqual(['needed', 'length']);
	expect(readKeptAnswer(JSON.stringify(told))).toEqual(told);
	const said = (key: string) =>
		textAt(task.method, key, task.right[key] ?? '').replace(/ \(.*/, '');
	const right = typed(said('length'), said('needed'));
	const check = await right.check();
	expect(check?.accepted).toBe(true);
	expect(check && afterCheck(noAnswer(1, 'in'), check)).toEqual(noAnswer(1, 'in'));
	expect(check && told && afterCheck(answerIn(right, told, 'in'), check).told).toEqual(told?.told);
});

test('an answer whose marks were seen tells which of it is not right', async () => {
	const answer = { ...noAnswer(1, 'in'), entries: { needed: '.3', length: '5/16' } };
	const marks = await markAnswer(own, answer);
	const less = marks.filter((one) => one.marks < one.of).map(({ key }) => key);
	expect(less.length).toBeGreaterThan(0);
	expect(afterMarks(answer, marks).told).toEqual(less);
	expect(afterMarks({ ...answer, told: less }, marks).told).toEqual(less);
	expect(
		afterMarks(
			answer,
			marks.map((one) => ({ ...one, marks: one.of }))
		)
	).toEqual(answer);
});
