import { describe, expect, test } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { missedSteps } from '../../../src/lib/engine/sets/missed-steps.ts';
import { taskFigures } from '../../../src/lib/engine/sets/task-figures.ts';
import type { Found } from '../../../src/lib/engine/sets/choose-hand-ins.ts';
import { collect } from '../../../src/lib/engine/sets/collect.ts';
import { readOverrides } from '../../../src/lib/engine/sets/override.ts';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import type { HandIn } from '../../../src/lib/engine/sets/hand-in.ts';
import { optionEntry } from '../../../src/lib/engine/sets/chosen-option.ts';
import { type OpenSet, openSet, type SetTask } from '../../../src/lib/engine/sets/open-set.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { stepsOf } from '../../../src/lib/engine/tasks/task.ts';
import { writeSet } from '../../../src/lib/exchange/set-link.ts';
import { handInOf, rightEntries, rightText } from './hand-ins.ts';

const terms = plainTerms('Section B, week 3');
const open = await openSet(await composeSet(terms, [readWish('RL2'), readWish('LR2')]));

function found(...handIns: HandIn[]): Found[] {
	return handIns.map((handIn, i) => ({ file: `${i + 1}.json`, handIn }));
}

async function markedOne(handIn: HandIn, from: OpenSet = open) {
	const { handIns, aside } = await collect(from, found(handIn));
	expect(aside).toEqual([]);
	const [first] = handIns;
	if (!first) throw new Error('not marked');
	return first;
}

/** What a slip leads to, as typed. */
function slipText({ task }: SetTask, slip: string, key: string): string {
	const step = task.method.slips[slip]?.step ?? '';
	const values = evaluate(task.method, task.drawn.given, { slips: { [step]: slip } });
	return textAt(task.method, key, values[key] ?? '').replace(/ \(.*\)$/, '');
}

describe('marks', () => {
	test('are full for right answers, in every family and level', async () => {
		const wishes = cards.flatMap(({ code }) => [1, 2, 3].map((level) => readWish(code + level)));
		for (let at = 0; at < wishes.length; at += 60) {
			const all = await openSet(await composeSet(terms, wishes.slice(at, at + 60)));
			const one = await markedOne(await handInOf(all, 'B01'), all);
			for (const task of one.tasks) expect(task).toMatchObject({ marks: task.of });
			expect(one.marks).toBe(all.of);
		}
	});

	test('a slip costs the mark of its own step; what follows from it counts', async () => {
		const [, row] = open.tasks;
		if (!row) throw new Error('no row');
		expect(stepsOf(row.task)).toEqual(['run', 'spaces', 'count', 'pitch']);
		const handIn = await handInOf(open, 'B14', (task) =>
			task.place === 1
				? rightEntries(task)
				: {
						count: slipText(task, 'noMargin', 'count'),
						pitch: slipText(task, 'noMargin', 'pitch')
					}
		);
		const one = await markedOne(handIn);
		expect(one.marks).toBe(open.of - 1);
		expect(one.tasks[1]?.answers).toMatchObject([
			{ key: 'count', marks: 2, of: 3, verdict: 'wrong', slips: ['noMargin'] },
			{ key: 'pitch', marks: 1, of: 1, verdict: 'carried', slips: [] }
		]);
	});

	test('a number that nothing explains has none of the steps that it speaks for', async () => {
		const handIn = await handInOf(open, 'B1', (task) =>
			task.place === 1
				? { needed: '23 in', length: '7 in' }
				: { count: '3', pitch: rightText(task.task, 'pitch') }
		);
		const { tasks } = await markedOne(handIn);
		expect(tasks[0]).toMatchObject({ marks: 0, of: 4 });
		expect(tasks[1]?.answers).toMatchObject([
			{ marks: 0, of: 3 },
			{ marks: 1, of: 1 }
		]);
	});

	test('steps entered by themselves are marked by themselves', async () => {
		const handIn = await handInOf(open, 'B1', ({ task, place }) =>
			place === 1 ? { grip: rightText(task, 'grip'), needed: '23 in', length: '7 in' } : {}
		);
		const { tasks } = await markedOne(handIn);
		expect(tasks[0]?.answers).toMatchObject([
			{ key: 'grip', marks: 1, of: 1 },
			{ key: 'needed', marks: 0, of: 2 },
			{ key: 'length', marks: 0, of: 1 }
		]);
	});

	test('what is left blank has none, what cannot be read has none and says why', async () => {
		const handIn = await handInOf(open, 'B1', ({ place }) =>
			place === 1 ? { length: 'about so' } : { pitch: ' ' }
		);
		const { tasks, marks, of } = await markedOne(handIn);
		expect([marks, of]).toEqual([0, 8]);
		expect(tasks[0]?.answers).toMatchObject([
			{ verdict: 'blank', of: 1 },
			{ verdict: 'unread', entry: 'about so', of: 3 }
		]);
		expect(tasks[0]?.answers[1]?.says).toMatch(/^[A-Z].*\.$/);
		expect(tasks[1]?.answers.map(({ verdict }) => verdict)).toEqual(['blank', 'blank']);
		expect(tasks[1]?.answers.reduce((sum, one) => sum + one.of, 0)).toBe(4);
	});

	test('an entry that can be meant in two ways is taken as the right one', async () => {
		const sixteenths = (Number(open.tasks[0]?.task.right.length) * 16).toString();
		const handIn = await handInOf(open, 'B1', (task) =>
			task.place === 1 ? { ...rightEntries(task), length: sixteenths } : rightEntries(task)
		);
		const { tasks } = await markedOne(handIn);
		expect(tasks[0]).toMatchObject({
			marks: 4,
			answers: [{ verdict: 'right' }, { entry: sixteenths, verdict: 'right' }]
		});
		// The student picked inches for it.
		const [first, ...others] = handIn.answers;
		if (!first) throw new Error('no answer');
		const picked = { ...handIn, answers: [{ ...first, picked: { length: 1 } }, ...others] };
		expect((await markedOne(picked)).tasks[0]?.marks).toBeLessThan(4);
	});

	test('a wrong answer never has all marks, where its step has none', async () => {
		const [first, second] = open.set.tasks;
		if (!first || !second) throw new Error('no tasks');
		const onlyLast = { ...open.set, tasks: [{ ...first, marks: [0, 0, 0, 3] }, second] };
		const reopened = await openSet(onlyLast);
		const handIn = await handInOf(reopened, 'B1', (task) =>
			task.place === 1
				? { ...rightEntries(task), length: slipText(task, 'down', 'length') }
				: rightEntries(task)
		);
		const { tasks } = await markedOne(handIn, reopened);
		expect(tasks[0]).toMatchObject({ marks: 0, of: 3, answers: [{}, { slips: ['down'] }] });
	});

	test('bare lengths are read in the units of the answer', async () => {
		const [first] = open.tasks;
		const mm = (key: string) => (Number(first?.task.right[key]) * 25.4).toFixed(3);
		const entries = { needed: mm('needed'), length: mm('length') };
		const handIn = await handInOf(open, 'B1', () => ({}));
		const answers = [{ ...handIn.answers[0], place: 1, entries, units: 'mm' }];
		const { tasks } = await markedOne({ ...handIn, answers } as HandIn);
		expect(tasks[0]?.marks).toBe(4);
	});
});

describe('options', () => {
	test('are marked by letter and by text, with the slip that leads to them', async () => {
		const set = { ...open.set, answers: 'options' as const };
		const chosen = await openSet(set);
		const [task] = chosen.tasks;
		if (!task?.question) throw new Error('no options');
		const { question } = task;
		const wrong = question.options.findIndex(({ cause }) => cause?.kind === 'slip');
		const entry = (place: number) => optionEntry(question, place);
		const rows = [
			{ text: entry(question.right), marks: 4 },
			{ text: entry(question.right).charAt(0), marks: 4 },
			{ text: entry(question.right).slice(3), marks: 4 },
			{ text: entry(wrong), marks: 3 },
			{ text: 'H', marks: 0 },
			{ text: 'X: 4 in', marks: 0 }
		];
		for (const { text, marks } of rows) {
			const handIn = await handInOf(chosen, 'B1', ({ place }) =>
				place === 1 ? { [question.key]: text } : {}
			);
			expect((await markedOne(handIn, chosen)).tasks[0], text).toMatchObject({ marks, of: 4 });
		}
	});
});

describe('every student gets marks in the order of the set', () => {
	test('with an order and numbers of their own', async () => {
		const own = await openSet({ ...open.set, order: 'mixed', numbers: 'own' });
		const codes = Array.from({ length: 8 }, (_, i) => `B0${i + 1}`);
		const handIns = await Promise.all(codes.map((code) => handInOf(own, code)));
		const { handIns: all } = await collect(own, found(...handIns));
		expect(all.map(({ code, marks }) => [code, marks])).toEqual(codes.map((code) => [code, 8]));
		for (const { tasks } of all) expect(tasks.map(({ place }) => place)).toEqual([1, 2]);
		expect(new Set(all.map(({ tasks }) => tasks[0]?.task)).size).toBe(8);
	});
});

describe('of several hand-ins', () => {
	test('equal ones are joined and told', async () => {
		const one = await handInOf(open, 'B05');
		const { handIns, aside } = await collect(open, found(one, structuredClone(one)));
		expect(handIns).toMatchObject([{ code: 'B05', files: ['1.json', '2.json'] }]);
		expect(aside).toEqual([]);
	});

	test('the newest version of a code is marked', async () => {
		const first = await handInOf(open, 'B05', () => ({}));
		const again = { ...(await handInOf(open, 'B05')), version: 2 };
		const { handIns, aside } = await collect(open, found(again, first));
		expect(handIns).toMatchObject([{ code: 'B05', version: 2, marks: 8, files: ['1.json'] }]);
		expect(aside).toEqual([
			{
				file: '2.json',
				why: 'B05 handed in again: version 2 is marked in place of version 1.',
				isSettled: true
			}
		]);
	});

	test('different ones under one code and version are all set aside', async () => {
		const one = await handInOf(open, 'B05');
		const other = await handInOf(open, 'B05', () => ({}));
		const { handIns, aside } = await collect(open, found(one, other, await handInOf(open, 'B06')));
		expect(handIns.map(({ code }) => code)).toEqual(['B06']);
		expect(aside.map(({ file }) => file)).toEqual(['1.json', '2.json']);
		expect(aside[0]?.why).toMatch(/^B05 stands on 2 different hand-ins of version 1: .*\.$/);
	});

	test('those of two learners under one code are all set aside, whatever their versions', async () => {
		const one = { ...(await handInOf(open, 'B05')), device: '0123456789' };
		const again = { ...one, version: 2 };
		const other = { ...again, device: 'ABCDEFGHJK' };
		const { handIns, aside } = await collect(open, found(one, other));
		expect(handIns).toEqual([]);
		expect(aside.map(({ file }) => file)).toEqual(['1.json', '2.json']);
		expect(aside[0]?.why).toMatch(/^B05 stands on hand-ins from 2 devices: .*\.$/);
		const own = await collect(open, found(one, again));
		expect(own.handIns).toMatchObject([{ code: 'B05', version: 2 }]);
	});

	test('an instructor chooses whose is marked, and may choose again', async () => {
		const one = { ...(await handInOf(open, 'B05')), device: '0123456789' };
		const paper = await handInOf(open, 'B05', () => ({}));
		const all = found(one, { ...one, device: 'ABCDEFGHJK' }, paper, { ...one, version: 2 });
		const { aside } = await collect(open, all);
		const [first, other, typed] = aside.map(({ instead }) => instead);
		if (!first || !other || !typed) throw new Error('nothing to choose');
		const chosen = await collect(open, all, { choices: [other, first] });
		expect(chosen.handIns).toMatchObject([{ code: 'B05', version: 2, files: ['4.json'] }]);
		expect(chosen.aside.map(({ file, instead }) => [file, instead])).toEqual([
			['1.json', undefined],
			['2.json', other],
			['3.json', typed]
		]);
		const again = await collect(open, all, { choices: [first, typed] });
		expect(again.handIns).toMatchObject([{ marks: 0, files: ['3.json'] }]);
		const gone = { code: 'B05', owner: 'ZZZZZZZZZZ' };
		expect((await collect(open, all, { choices: [gone] })).aside).toEqual(aside);
	});

	test('one of another set is set aside', async () => {
		const other = await openSet({ ...open.set, note: 'Other' });
		const { handIns, aside } = await collect(open, found(await handInOf(other, 'B05')));
		expect(handIns).toEqual([]);
		expect(aside).toEqual([
			{
				file: '1.json',
				why: `Belongs to another set, ${other.hash}; this one is ${open.hash}.`,
				elsewhere: await writeSet(other.set)
			}
		]);
	});

	test('one with a task or step that there is not is set aside', async () => {
		const one = await handInOf(open, 'B05', () => ({ girth: '1' }));
		const [answer] = one.answers;
		if (!answer) throw new Error('no answer');
		const far = { ...one, code: 'B06', answers: [{ ...answer, place: 3, entries: {} }] };
		const { handIns, aside } = await collect(open, found(one, far));
		expect(handIns).toEqual([]);
		expect(aside.map(({ why }) => why)).toEqual(
			[
				'It answers task 3, and the set has 2.',
				'Task 1 has no step girth; it was not made by Bucktail.'
			].reverse()
		);
	});
});

describe('an override', () => {
	const data = [
		{ code: 'b05', task: 2, marks: 1, note: 'First thought.' },
		{ code: 'B05', task: 2, marks: 2, note: 'Method shown on paper.' }
	];

	test('changes the marks and is recorded, the last one for a task', async () => {
		const overrides = readOverrides(data) ?? [];
		const handIn = await handInOf(open, 'B05', () => ({}));
		const { handIns } = await collect(open, found(handIn), { overrides });
		expect(handIns).toMatchObject([
			{
				marks: 2,
				tasks: [{ marks: 0 }, { marks: 2, changed: { from: 0, note: 'Method shown on paper.' } }]
			}
		]);
	});

	test('is read from data that is one, and gives no more than there is', async () => {
		expect(readOverrides([{ code: 'B05', task: 2, marks: -1, note: 'x' }])).toBeNull();
		expect(readOverrides([{ code: '<b>', task: 2, marks: 1, note: 'x' }])).toBeNull();
		expect(readOverrides([{ code: 'B05', task: 2, marks: 1, note: ' ' }])).toBeNull();
		expect(readOverrides('x')).toBeNull();
		const overrides = readOverrides([{ code: 'B05', task: 1, marks: 100, note: 'x' }]) ?? [];
		const handIn = await handInOf(open, 'B05', () => ({}));
		const { handIns } = await collect(open, found(handIn), { overrides });
		expect(handIns[0]?.marks).toBe(4);
	});
});

describe('the class', () => {
	/** Six students: the first two have all, two leave a margin, the last two leave all blank. */
	async function collected() {
		const handIns = await Promise.all(
			['A1', 'A2', 'B1', 'B2', 'C1', 'C2'].map((code) =>
				handInOf(open, code, (task) => {
					if (code.startsWith('C')) return {};
					if (code.startsWith('A') || task.place === 1) return rightEntries(task);
					return {
						count: slipText(task, 'noMargin', 'count'),
						pitch: slipText(task, 'noMargin', 'pitch')
					};
				})
			)
		);
		return collect(open, found(...handIns));
	}

	test('has its slips by step, counted once where they are carried on', async () => {
		const { handIns } = await collected();
		expect(missedSteps(open, handIns)).toMatchObject([
			{
				places: [2],
				codes: ['B1', 'B2'],
				slips: [{ slip: 'noMargin', codes: ['B1', 'B2'] }]
			}
		]);
	});

	test('has the difficulty of each task, and how it tells students apart', async () => {
		const { handIns } = await collected();
		const [first, second] = taskFigures(open, handIns);
		expect(first).toMatchObject({ difficulty: 4 / 6, discrimination: 1 });
		expect(second?.difficulty).toBeCloseTo((1 + 1 + 0.75 + 0.75) / 6, 12);
		// By the first task alone four are level at the top: their mean is 3.5 of 4.
		expect(second?.discrimination).toBeCloseTo(0.875, 12);
		expect(taskFigures(open, handIns.slice(0, 5))[0]?.discrimination).toBeNull();
		expect(taskFigures(open, [])[0]).toMatchObject({ difficulty: null, seconds: null });
	});
});
