import { describe, expect, test } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import {
	composeSet,
	plainTerms,
	readWish,
	spreadMarks
} from '../../../src/lib/engine/sets/compose.ts';
import { openSet } from '../../../src/lib/engine/sets/open-set.ts';
import { mostTasks, readSet, setHash, type TaskSet } from '../../../src/lib/engine/sets/set.ts';
import { readCode } from '../../../src/lib/engine/sets/student-code.ts';
import { stepsOf } from '../../../src/lib/engine/tasks/task.ts';
import { readTaskNumber, writeTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';

const terms = plainTerms('Section B, week 6');
const set = await composeSet(terms, [readWish('RL2*3'), readWish('ED1*2'), readWish('LR3')]);

describe('a set', () => {
	test('is dealt in the order of its wishes, a mark for every step', async () => {
		expect(set.tasks.map(({ number }) => number.slice(0, 3))).toEqual(
			'RL2 RL2 RL2 ED1 ED1 LR3'.split(' ')
		);
		const { tasks, of } = await openSet(set);
		expect(tasks.map(({ marks }) => marks.length)).toEqual(
			tasks.map(({ task }) => stepsOf(task).length)
		);
		expect(of).toBe(3 * 4 + 2 * 2 + 5);
		expect(new Set(set.tasks.map(({ number }) => number)).size).toBe(6);
	});

	test('is dealt alike from the same seed text, and whatever else is asked for', async () => {
		expect(
			await composeSet(terms, [readWish('RL2*3'), readWish('ED1*2'), readWish('LR3')])
		).toEqual(set);
		const other = await composeSet(terms, [readWish('BS2*4'), readWish('RL2*2'), readWish('ED1')]);
		expect(other.tasks.slice(4)).toEqual([set.tasks[0], set.tasks[1], set.tasks[3]]);
		const reseeded = await composeSet({ ...terms, seed: 'Section C' }, [readWish('RL2*3')]);
		expect(reseeded.tasks[0]?.number).not.toBe(set.tasks[0]?.number);
	});

	test('has the marks that are wished for: of each step, or of a whole task', async () => {
		const wishes = [readWish('RL2*2=2,1,1,3'), readWish('rl2 '), readWish('ED1=5')];
		const { tasks } = await composeSet(terms, wishes);
		expect(tasks.map(({ marks }) => marks)).toEqual([
			[2, 1, 1, 3],
			[2, 1, 1, 3],
			[1, 1, 1, 1],
			[2, 3]
		]);
		await expect(composeSet(terms, [readWish('RL2=1,2')])).rejects.toThrow(
			/^RL2 has 4 steps, .*: give a mark for each/
		);
		expect(spreadMarks(10, 4)).toEqual([2, 2, 3, 3]);
		expect(spreadMarks(2, 4)).toEqual([0, 0, 1, 1]);
	});

	test.each([
		['title', { title: '' }, 'its title is empty'],
		['title', { title: 'x'.repeat(81) }, 'its title has more than 80 characters'],
		['title', { title: 'a\u0007' }, 'its title has characters that cannot be shown'],
		['note', { note: 'x'.repeat(401) }, 'its note has more than 400 characters'],
		['due', { due: '2026-02-30' }, 'its due is no day of the calendar'],
		['due', { due: 'Friday' }, 'its due is no date'],
		['order', { order: 'any' }, 'its order is not as it should be'],
		['tasks', { tasks: [] }, 'its tasks are none'],
		['tasks', { tasks: [{ number: 'RL2-0004-1C', marks: [1] }] }, 'tasks.0.number is no task'],
		['tasks', { tasks: [{ number: 'RL2-0004-1D', marks: [1.5] }] }, 'tasks.0.marks.0 is not as'],
		['tasks', { tasks: [{ number: 'RL2-0004-1D', marks: [-1] }] }, 'tasks.0.marks.0 is not as'],
		['help', { help: 'no' }, 'its help is not as it should be']
	])('with another %s is refused: %o', (_, part, says) => {
		const reading = readSet({ ...set, ...part });
		expect(reading).toMatchObject({ ok: false, sentence: expect.stringContaining(says) });
	});

	test('has no room for more tasks than it may have', () => {
		const tasks = Array.from({ length: mostTasks + 1 }, () => set.tasks[0]);
		expect(readSet({ ...set, tasks }).ok).toBe(false);
		expect(readSet({ ...set, tasks: tasks.slice(1) }).ok).toBe(true);
	});

	test('says plainly which task is of another revision, or gone', async () => {
		const id = readTaskNumber(set.tasks[1]?.number ?? '');
		const moved = (number: string): TaskSet => ({
			...set,
			tasks: set.tasks.map((task, i) => (i === 1 ? { ...task, number } : task))
		});
		const older = writeTaskNumber({ ...id, rev: 0 });
		await expect(openSet(moved(older))).rejects.toThrow(
			new RegExp(`^Task 2 of the set, ${older}: “.*” draws other numbers since an update`)
		);
		const newer = writeTaskNumber({ ...id, rev: 31 });
		await expect(openSet(moved(newer))).rejects.toThrow(/newer than this copy/);
		const gone = writeTaskNumber({ ...id, code: 'QQ' });
		await expect(openSet(moved(gone))).rejects.toThrow(/No family of tasks has the code QQ/);
		const [first, ...rest] = set.tasks;
		if (!first) throw new Error('no task');
		const short = { ...set, tasks: [{ ...first, marks: [1] }, ...rest] };
		await expect(openSet(short)).rejects.toThrow(/Task 1 of the set has 4 steps and marks for 1/);
	});
});

describe('numbers of their own', () => {
	test('are other ones of the same kind for every code, asked alike, in every family', async () => {
		const wishes = cards.flatMap(({ code }) => [1, 2, 3].map((level) => readWish(code + level)));
		for (let at = 0; at < wishes.length; at += mostTasks) {
			const part = await composeSet({ ...terms, numbers: 'own' }, wishes.slice(at, at + mostTasks));
			const open = await openSet(part);
			const [one, other] = [open.for('B05'), open.for('B06')];
			for (const [i, base] of open.tasks.entries()) {
				for (const { task } of [one[i] ?? base, other[i] ?? base]) {
					expect({ ...task.id, seed: 0 }).toEqual({ ...base.task.id, seed: 0 });
					expect(task.drawn.asked).toEqual(base.task.drawn.asked);
					expect(stepsOf(task)).toEqual(stepsOf(base.task));
				}
			}
			const same = one.filter(({ task }, i) => task.number === other[i]?.task.number);
			expect(same).toEqual([]);
			expect(open.for('B05')).toEqual(one);
		}
	});

	test('are not the ones that a set with another note gives', async () => {
		const own: TaskSet = { ...set, numbers: 'own' };
		const [one, other] = [await openSet(own), await openSet({ ...own, note: 'x' })];
		expect(one.for('B05')[0]?.task.number).not.toBe(other.for('B05')[0]?.task.number);
	});
});

test('an order of their own holds every task once, and is the same again', async () => {
	const open = await openSet({ ...set, order: 'mixed' });
	const orders = ['B01', 'B02', 'B03', 'B04'].map((code) => open.for(code).map((one) => one.place));
	for (const order of orders) expect([...order].sort()).toEqual([1, 2, 3, 4, 5, 6]);
	expect(new Set(orders.map(String)).size).toBeGreaterThan(2);
	expect(open.for('B01').map(({ place }) => place)).toEqual(orders[0]);
});

test('options are offered where a task has enough, and never for a list', async () => {
	const { tasks } = await openSet({ ...set, answers: 'options' });
	const keys = tasks.map(({ question }) => question?.key);
	expect(keys.slice(0, 5)).toEqual(['length', 'length', 'length', 'least', 'least']);
	expect(keys[5]).not.toBe('positions');
});

describe('wishes', () => {
	test.each(['', 'RL', 'RL4', 'RL2*', 'RL2*0', 'RL2*61', 'RL2*x', 'QQ2', 'RL2*3*3'])(
		'%o is refused with a sentence',
		(typed) => {
			expect(() => readWish(typed)).toThrow(/^[A-Z].*\.$/);
		}
	);

	test('are read in any writing', () => {
		expect(readWish(' rl2×3 ')).toEqual({ code: 'RL', level: 2, count: 3 });
		expect(readWish('ED1')).toEqual({ code: 'ED', level: 1, count: 1 });
	});

	test('are refused when they come to too many', async () => {
		await expect(composeSet(terms, [])).rejects.toThrow('A set has 1 to 60 tasks.');
		const many = [readWish('RL2*40'), readWish('RL1*40')];
		await expect(composeSet(terms, many)).rejects.toThrow('A set has 1 to 60 tasks.');
	});
});

describe('a student code', () => {
	test.each([
		['b05', 'B05'],
		['  B 05 ', 'B 05'],
		['Ｂ０５', 'B05'],
		['müller-7', 'MÜLLER-7']
	])('%o is read as %s', (typed, code) => {
		expect(readCode(typed)).toEqual({ ok: true, code });
	});

	test.each([
		'',
		'   ',
		'<b>B05</b>',
		'<script>',
		'=1+1',
		'-B05',
		'B05"',
		"B05'",
		'a\u0000b',
		'x'.repeat(25),
		'../etc',
		'a/b'
	])('%o is refused with a sentence', (typed) => {
		const reading = readCode(typed);
		expect(reading).toMatchObject({ ok: false, sentence: expect.stringMatching(/^[A-Z].*\.$/) });
	});
});

test('hashes of sets are eight digits in two groups', () => {
	expect(setHash(set)).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
});
