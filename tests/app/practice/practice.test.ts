import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type AttemptFacts, device } from '../../../src/lib/app/device/device.svelte.ts';
import { logbook } from '../../../src/lib/app/device/logbook.ts';
import {
	startAfterLesson,
	startChosen,
	startFree
} from '../../../src/lib/app/practice/free-run.ts';
import { startPlan } from '../../../src/lib/app/plan/start-plan.ts';
import type { Below } from '../../../src/lib/app/practice/run.ts';
import { Practice } from '../../../src/lib/app/practice/practice.svelte.ts';
import { cardByCode, loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { cardsOf } from '../../../src/lib/engine/families/topics.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { choicesIn } from '../../../src/lib/engine/marking/verdict.ts';
import { exactly } from '../../../src/lib/engine/quantity/exact.ts';
import { loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { readTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';
import { emptyLearning } from '../../../src/lib/engine/schedule/learning.ts';
import { emptyMemory } from '../../../src/lib/engine/schedule/memory.ts';
import { chosenCheck } from '../../../src/lib/ui/sheet/checking.ts';
import { rightAnswers, wrongAnswers } from '../../browser/keyboard.ts';
import { atWork, samAtWork } from '../at-work.ts';
import { belowFrom } from '../seeded-chance.ts';

/** A busy machine takes long to load every family. */
const patient = { timeout: 30_000 };

let recorded: AttemptFacts[] = [];
const kept = samAtWork();

beforeEach(() => {
	recorded = [];
	vi.spyOn(crypto, 'getRandomValues').mockImplementation(seeded(belowFrom(7)));
	vi.spyOn(logbook, 'record').mockImplementation((facts) => {
		recorded.push(facts);
		return Promise.resolve(true);
	});
});

/** What the browser gives by chance, the same in every run. */
function seeded(below: Below): Crypto['getRandomValues'] {
	return (words) => {
		(words as unknown as Uint32Array).fill(below(2 ** 32));
		return words;
	};
}

/** Records that end when the test says so, in the order they were begun. */
function heldRecords(): ((saved: boolean) => Promise<void>)[] {
	const ends: ((saved: boolean) => Promise<void>)[] = [];
	vi.spyOn(logbook, 'record').mockImplementation((facts) => {
		recorded.push(facts);
		return new Promise((resolve) => {
			ends.push(async (saved) => {
				resolve(saved);
				await new Promise((done) => setTimeout(done));
			});
		});
	});
	return ends;
}

/** Types the answers into the open task and checks them, as the page does. */
async function answer(
	practice: Practice,
	answers: Readonly<Record<string, string>>
): Promise<void> {
	const { work } = practice;
	if (!work) throw new Error('no task is open');
	for (const line of work.lines) line.type(answers[line.key] ?? '');
	const check = await work.check();
	if (!check) throw new Error('not read');
	await practice.checked(check);
}

function taskOf({ work }: Practice) {
	if (!work) throw new Error('no task is open');
	return work.task;
}

/** A task that asks for one number, and an answer that several slips lead to. */
async function answerOfTwo(): Promise<{ number: string; key: string; text: string }> {
	const card = cardByCode('BR');
	const family = card && (await loadFamily(card));
	const key = 'radius';
	for (let seed = 0; family && seed < 200; seed++) {
		const task = drawTask(family, 1, seed);
		for (const values of task.slips.values()) {
			const text = Number(values[key]).toFixed(3);
			const entry = { value: exactly(Number(text)), grain: 5e-4 };
			const verdict = mark(task, { [key]: entry })[key];
			if (verdict?.kind === 'rework' && verdict.cause.kind === 'either' && !verdict.cause.causes)
				return { number: task.number, key, text };
		}
	}
	throw new Error('every answer has one cause');
}

const answerRight = (practice: Practice) => answer(practice, rightAnswers(taskOf(practice)));
const answerWrong = (practice: Practice) => answer(practice, wrongAnswers(taskOf(practice)));
const kindOf = (number: string) => number.slice(0, 3);

async function freeRun(): Promise<Practice> {
	const practice = new Practice();
	await startFree(practice, 'rivets', 2);
	return practice;
}

async function plannedRun(): Promise<Practice> {
	const practice = new Practice();
	expect(await startPlan(practice)).toBe(true);
	return practice;
}

test('the task after one that was shown worked is talked through, until it is left otherwise', async () => {
	const practice = await plannedRun();
	const { run } = practice;
	const at = run?.tasks.findIndex(
		({ standing, planned }) => standing === 'open' && planned?.worked === true
	);
	if (!run || at === undefined || at < 1) throw new Error('nothing is new in this run');
	expect(run.tasks[at - 1]?.standing).toBe('shown');
	await practice.go(at);
	const steps = practice.work?.stepKeys.length ?? 0;
	expect(practice.work?.byStep).toBe(steps > 1);
	if (practice.work) practice.work.byStep = false;
	practice.keepNotes();
	await practice.go(at - 1);
	expect(practice.work?.byStep).toBe(false);
	await practice.go(at);
	expect(practice.work?.byStep).toBe(false);
});

describe('a run of a topic that somebody chose', () => {
	const standings = ({ run }: Practice) => (run?.tasks ?? []).map(({ standing }) => standing);

	async function chosenRun(): Promise<Practice> {
		const practice = new Practice();
		await startChosen(practice, 'bends', 1);
		return practice;
	}

	test('begins with a worked task, talks the next one through, and then leaves one alone', async () => {
		const practice = await chosenRun();
		expect(practice.task?.standing).toBe('shown');
		expect(practice.work?.worked).toBe(true);
		const { family } = taskOf(practice);
		await practice.next();
		expect(taskOf(practice).family.id).toBe(family.id);
		expect(practice.work?.byStep).toBe((practice.work?.stepKeys.length ?? 0) > 1);
		expect(practice.run?.tasks.filter(({ standing }) => standing === 'open')).toHaveLength(10);
		// Ten tasks of seven kinds: the last is of one that was met in this run.
		await practice.go((practice.run?.tasks.length ?? 0) - 1);
		expect(practice.work).toMatchObject({ byStep: false, worked: false });
	});

	test('takes what is new from easy to hard: what it stands on comes before it', async () => {
		const { run } = await chosenRun();
		const { kinds } = (await loadPlanner()).syllabus;
		const shown = (run?.tasks ?? []).filter(({ standing }) => standing === 'shown');
		const ranks = shown.map(({ number }) => kinds.findIndex(({ id }) => id === kindOf(number)));
		expect(ranks.length).toBeGreaterThan(3);
		expect(ranks).toEqual(ranks.toSorted((one, other) => one - other));
	});

	test('shows a kind worked once, and none whose steps were all met before', async () => {
		const { run } = await chosenRun();
		const shown = (run?.tasks ?? []).filter(({ standing }) => standing === 'shown');
		const kinds = shown.map(({ number }) => kindOf(number));
		expect(new Set(kinds).size).toBe(kinds.length);
		const skills = (await loadPlanner()).syllabus.skills.map(({ id }) => id);
		const met = { ...emptyMemory, lastDay: 20000, stability: 5 };
		device.learning = {
			...emptyLearning(),
			memories: Object.fromEntries(skills.map((id) => [id, met]))
		};
		expect(standings(await chosenRun())).toEqual(Array.from({ length: 10 }, () => 'open'));
	});

	test('is what somebody known here gets who opens practice with no run begun', async () => {
		const practice = new Practice();
		await practice.start();
		expect(standings(practice).slice(0, 2)).toEqual(['shown', 'open']);
	});

	test('gives a newcomer the first task at once, and what is new after it worked first', async () => {
		const practice = new Practice();
		atWork(null);
		await practice.start();
		atWork('sam');
		expect(standings(practice)).toEqual(Array.from({ length: 10 }, () => 'open'));
		const first = practice.number;
		await vi.waitFor(
			() => expect(standings(practice).slice(1, 3)).toEqual(['shown', 'open']),
			patient
		);
		expect(practice.number).toBe(first);
		expect(practice.run?.tasks[2]?.planned?.worked).toBe(true);
	});

	test('leaves a newcomer who has gone on where he is', async () => {
		const practice = new Practice();
		atWork(null);
		await practice.start();
		await practice.go(4);
		atWork('sam');
		const before = practice.run?.tasks.slice(0, 5).map(({ number }) => number);
		await vi.waitFor(() => expect(standings(practice)).toContain('shown'), patient);
		expect(practice.run?.tasks.slice(0, 5).map(({ number }) => number)).toEqual(before);
		expect(practice.run?.at).toBe(4);
	});

	test('after a lesson is five tasks of its family, a worked one first, and then over', async () => {
		const practice = new Practice();
		const [card] = cardsOf('bends');
		if (!card) throw new Error('no bends');
		await startAfterLesson(practice, card);
		expect(standings(practice).slice(0, 2)).toEqual(['shown', 'open']);
		const tasks = practice.run?.tasks ?? [];
		expect(tasks.filter(({ standing }) => standing === 'open')).toHaveLength(5);
		expect(new Set(tasks.map(({ number }) => number.slice(0, 2)))).toEqual(new Set([card.code]));
		expect(practice.atEnd).toBe(false);
		await practice.go(tasks.length - 1);
		expect(practice.atEnd).toBe(true);
		const again = new Practice();
		await again.load();
		expect(again.atEnd).toBe(true);
	});

	test('begins, mixed, with one of the easier kinds of the first topic', async () => {
		const easier = cardsOf('rivets').slice(0, 4);
		for (let n = 0; n < 30; n++) {
			const practice = new Practice();
			await startFree(practice, 'mixed', 1);
			const { code } = readTaskNumber(practice.number ?? '');
			expect(easier.map((card) => card.code)).toContain(code);
		}
	});

	test('goes on past its end in the same way', async () => {
		const practice = new Practice();
		await startChosen(practice, 'mixed', 1);
		const before = practice.run?.tasks.length ?? 0;
		// Each is of a kind by chance, so one that is new comes soon.
		for (let n = 0; n < 40; n++) await practice.go(practice.run?.tasks.length ?? 0);
		expect(standings(practice).slice(before)).toContain('shown');
	});

	test('is ten tasks as they come where the log cannot be read', async () => {
		device.learning = null;
		expect(standings(await chosenRun())).toEqual(Array.from({ length: 10 }, () => 'open'));
	});

	test('does not part a worked task from its own when a miss comes back', async () => {
		const practice = await chosenRun();
		for (let at = 0; at < 14; at++) {
			await practice.go(at);
			if (practice.task?.standing === 'open') await practice.worked();
		}
		const { tasks } = practice.run ?? { tasks: [] };
		expect(tasks.length).toBeGreaterThan(17);
		tasks.forEach(({ standing, planned }, i) => {
			if (standing === 'shown') expect(tasks[i + 1]?.planned).toEqual(planned);
		});
	});
});

test('a task that is talked through stands as right once every step was', async () => {
	const practice = await plannedRun();
	await practice.next();
	const { work } = practice;
	if (!work?.byStep) throw new Error('it is not talked through');
	const { method, right } = work.task;
	const said = work.stepKeys.map(
		(key) => [key, textAt(method, key, right[key] ?? '').replaceAll(', ', '; ')] as const
	);
	for (let done = 1; done <= said.length; done++) {
		expect(practice.task?.standing).toBe('open');
		await answer(practice, Object.fromEntries(said.slice(0, done)));
	}
	expect(practice.task?.standing).toBe('right');
	// All but the last are steps on the way: left there, it would be no task that was done.
	const parts = recorded.map(({ part = false }) => part);
	expect(parts).toEqual(said.map((_, i) => i < said.length - 1));
});

describe('an answer', () => {
	test('goes to the log with all that the plan needs', async () => {
		const practice = await freeRun();
		const task = taskOf(practice);
		await answerRight(practice);
		expect(recorded).toHaveLength(1);
		expect(recorded[0]).toMatchObject({
			task: task.number,
			level: 2,
			runId: practice.run?.id,
			source: 'practice',
			typed: rightAnswers(task),
			opened: [],
			byStep: false,
			worked: false
		});
		expect(recorded[0]?.skills.map(({ result }) => result)).not.toContain('wrong');
		expect(recorded[0]?.givens).toContain(task.id.code);
	});

	test('counts the seconds since the task was opened or last checked, ten minutes at most', async () => {
		vi.useFakeTimers({ toFake: ['Date'] });
		try {
			const practice = await freeRun();
			vi.setSystemTime(Date.now() + 42_000);
			await answerWrong(practice);
			vi.setSystemTime(Date.now() + 3_600_000);
			await answerRight(practice);
			expect(recorded.map(({ seconds }) => seconds)).toEqual([42, 600]);
		} finally {
			vi.useRealTimers();
		}
	});

	test.each([
		['right', answerRight, 'right'],
		['wrong', answerWrong, 'wrong']
	] as const)('%s at once stands so', async (_name, give, standing) => {
		const practice = await freeRun();
		await give(practice);
		expect(practice.task?.standing).toBe(standing);
	});

	test('right at the second try, or with a step opened, stands as helped', async () => {
		const practice = await freeRun();
		await answerWrong(practice);
		await answerRight(practice);
		expect(practice.task?.standing).toBe('helped');
		expect(recorded[1]?.skills.map(({ result }) => result)).toEqual(
			recorded[0]?.skills.filter(({ result }) => result === 'wrong').map(() => 'helped')
		);
		await practice.openNumber('RL1-00C8-8D');
		practice.work?.openStep();
		await answerRight(practice);
		expect(practice.task?.standing).toBe('helped');
	});

	test('that two slips lead to is settled by what the person says, and kept', async () => {
		const practice = await freeRun();
		const { number, key, text } = await answerOfTwo();
		await practice.openNumber(number);
		await answer(practice, { [key]: text });
		const verdict = practice.work?.last?.verdicts[key];
		const [, cause] = verdict?.kind === 'rework' ? choicesIn(verdict.cause) : [];
		if (cause?.kind !== 'slip') throw new Error('nothing to choose from');
		const check = practice.work && chosenCheck(practice.work, key, cause);
		if (!check) throw new Error('not checked');
		await practice.chosen(check, cause);
		expect(practice.work?.last?.verdicts[key]).toEqual({ kind: 'rework', cause });
		const task = taskOf(practice);
		const slip = task.method.slips[cause.slips[0] ?? ''];
		const skill = task.method.steps[slip?.step ?? '']?.skill;
		expect(recorded).toHaveLength(2);
		expect(recorded[1]).toMatchObject({
			verdicts: { [key]: { kind: 'rework', cause: 'slip', slips: cause.slips } },
			told: [{ skill, slip: slip?.id }]
		});
		// What the first check charged is not charged again.
		const charged = recorded[0]?.skills.map((one) => one.skill);
		expect(recorded[1]?.skills.filter((one) => charged?.includes(one.skill))).toEqual([]);
		// It stays told: the same answer is the same slip, after a reload too.
		practice.keepNotes();
		const again = new Practice();
		await again.load();
		await again.go(again.run?.at ?? 0);
		expect(again.work?.last?.verdicts[key]).toEqual({ kind: 'rework', cause });
	});

	test('step by step shows each step once', async () => {
		const practice = await freeRun();
		await practice.openNumber('RL1-00C8-8D');
		if (practice.work) practice.work.byStep = true;
		const task = taskOf(practice);
		const all = rightAnswers({ ...task, drawn: { ...task.drawn, asked: ['grip', 'shank'] } });
		await answer(practice, { grip: all.grip ?? '' });
		await answer(practice, all);
		expect(recorded.map(({ skills }) => skills.map(({ skill }) => skill))).toEqual([
			['piece/grip'],
			['piece/shank']
		]);
	});
});

describe('“saved” is said', () => {
	test('when the answer is safe, not before', async () => {
		const [practice, ends] = [await freeRun(), heldRecords()];
		void answerWrong(practice);
		await vi.waitFor(() => expect(practice.saved).toBe('saving'));
		await ends[0]?.(true);
		expect(practice.saved).toBe('saved');
	});

	test('of no answer that could not be kept', async () => {
		const practice = await freeRun();
		vi.spyOn(logbook, 'record').mockResolvedValue(false);
		await answerRight(practice);
		expect(practice.saved).toBe('failed');
	});

	test('of the answer that is shown, not of an earlier one', async () => {
		const [practice, ends] = [await freeRun(), heldRecords()];
		void answerWrong(practice);
		await vi.waitFor(() => expect(ends).toHaveLength(1));
		void answerRight(practice);
		await vi.waitFor(() => expect(ends).toHaveLength(2));
		await ends[0]?.(true);
		expect(practice.saved).toBe('saving');
		await ends[1]?.(true);
		expect(practice.saved).toBe('saved');
	});

	test('not of the task that was opened meanwhile', async () => {
		const [practice, ends] = [await freeRun(), heldRecords()];
		void answerWrong(practice);
		await vi.waitFor(() => expect(ends).toHaveLength(1));
		await practice.next();
		await ends[0]?.(true);
		expect(practice.saved).toBe('none');
	});
});

describe('a miss', () => {
	test('comes back in a free run after three others, with another number', async () => {
		const practice = await freeRun();
		const { number } = taskOf(practice);
		const before = practice.run?.tasks ?? [];
		await answerWrong(practice);
		const after = practice.run?.tasks ?? [];
		expect(after.map((task) => task.number)).toEqual(
			before.toSpliced(4, 0, after[4] ?? { number, standing: 'open' }).map((task) => task.number)
		);
		expect(kindOf(after[4]?.number ?? '')).toBe(kindOf(number));
		expect(after[4]?.number).not.toBe(number);
	});

	test('comes back once, however often it is missed', async () => {
		const practice = await freeRun();
		const length = practice.run?.tasks.length ?? 0;
		await answerWrong(practice);
		await answerWrong(practice);
		await practice.worked();
		expect(practice.run?.tasks).toHaveLength(length + 1);
	});

	test('comes back when the working was asked for instead, and is in the log once', async () => {
		const practice = await freeRun();
		const length = practice.run?.tasks.length ?? 0;
		await practice.worked();
		await practice.worked();
		expect(practice.run?.tasks).toHaveLength(length + 1);
		expect(practice.task?.standing).toBe('wrong');
		expect(recorded).toHaveLength(1);
		expect(recorded[0]?.skills.every(({ result }) => result === 'wrong')).toBe(true);
	});

	test('does not come back step by step, where it was put right on the way', async () => {
		const practice = await freeRun();
		await practice.openNumber('RL1-00C8-8D');
		const length = practice.run?.tasks.length ?? 0;
		if (practice.work) practice.work.byStep = true;
		await answer(practice, { grip: '97.7' });
		expect(practice.run?.tasks).toHaveLength(length);
	});

	test('comes back in the plan’s run with the same kind and a reason', async () => {
		const practice = await plannedRun();
		await practice.next();
		const missed = practice.task;
		expect(missed?.standing).toBe('open');
		await answerWrong(practice);
		const back = practice.run?.tasks.find(({ planned }) => planned?.returned);
		expect(back?.planned).toMatchObject({
			kind: missed?.planned?.kind,
			reason: { kind: 'missed' }
		});
		expect(practice.task?.number).toBe(missed?.number);
	});

	test('is the one that comes back, though somebody has gone on while it was saved', async () => {
		const [practice, ends] = [await plannedRun(), heldRecords()];
		await practice.next();
		const missed = practice.task?.planned?.kind;
		void answerWrong(practice);
		await vi.waitFor(() => expect(ends).toHaveLength(1));
		await practice.next();
		await practice.next();
		practice.keepNotes();
		const open = practice.number;
		await ends[0]?.(true);
		await vi.waitFor(() =>
			expect(practice.run?.tasks.find(({ planned }) => planned?.returned)?.planned?.kind).toBe(
				missed
			)
		);
		expect(practice.number).toBe(open);
	});

	test('does not reach into another run begun meanwhile', async () => {
		const [practice, ends] = [await freeRun(), heldRecords()];
		void answerWrong(practice);
		await vi.waitFor(() => expect(ends).toHaveLength(1));
		await startFree(practice, 'bends', 1);
		const run = practice.run;
		await ends[0]?.(true);
		expect(practice.run).toBe(run);
	});
});

describe('a task number', () => {
	test('opens its task next in the run', async () => {
		const practice = await freeRun();
		expect(await practice.openNumber('rl1 00c8 8d')).toBe(true);
		expect(practice.run?.at).toBe(1);
		expect(practice.number).toBe('RL1-00C8-8D');
	});

	test('that is wrong says why and changes nothing', async () => {
		const practice = await freeRun();
		const { run, work } = practice;
		expect(await practice.openNumber('RL1-0004-1C')).toBe(false);
		expect(practice.problem).toContain('One character');
		expect(practice.run).toBe(run);
		expect(practice.work).toBe(work);
	});

	test('with no run begun starts one of its topic', async () => {
		const practice = new Practice();
		await practice.openNumber('RL1-00C8-8D');
		expect(practice.run).toMatchObject({ topic: 'rivets', level: 1, at: 0 });
		await practice.next();
		expect(readTaskNumber(practice.number ?? '').level).toBe(1);
	});

	test('with new numbers of the same kind comes next', async () => {
		const practice = await freeRun();
		const { number } = taskOf(practice);
		await practice.alike();
		expect(practice.run?.at).toBe(1);
		expect(kindOf(practice.number ?? '')).toBe(kindOf(number));
	});
});

describe('what was done', () => {
	test('is there again: the run, what was typed, and its verdict', async () => {
		const practice = await freeRun();
		await answerWrong(practice);
		const again = new Practice();
		await again.load();
		expect(again.run).toEqual(practice.run);
		await again.go(0);
		expect(again.work?.last?.accepted).toBe(false);
		expect(again.work?.notes().typed).toEqual(practice.work?.notes().typed);
		// It is shown again, not answered again.
		expect(recorded).toHaveLength(1);
	});

	test('is kept for each learner apart', async () => {
		const practice = await freeRun();
		atWork('kit');
		const other = new Practice();
		await other.load();
		expect(other.run).toBeNull();
		atWork('sam');
		await other.load();
		expect(other.run).toEqual(practice.run);
	});

	test('before there was a learner becomes the first learner’s', async () => {
		atWork(null);
		const practice = await freeRun();
		atWork('sam');
		await answerRight(practice);
		expect([...kept.keys()]).toEqual(['bucktail.run.sam']);
	});

	test('lasts until the page is closed where nothing can be stored', async () => {
		vi.stubGlobal('localStorage', undefined);
		const practice = await freeRun();
		await answerRight(practice);
		expect(practice.task?.standing).toBe('right');
	});
});

test.each([
	['one after the other', (practice: Practice) => practice.next()],
	['of the same kind', (practice: Practice) => practice.alike()]
])('hundreds of tasks %s stay small, and are there again', async (_, go) => {
	const practice = await freeRun();
	for (let n = 0; n < 310; n++) await go(practice);
	expect(practice.run?.tasks.length).toBeLessThanOrEqual(120);
	await answerRight(practice);
	const again = new Practice();
	await again.load();
	expect(again.run).toEqual(practice.run);
	expect(again.number).toBe(practice.number);
	expect(recorded[0]?.runId).toBe(again.run?.id);
});

test('a free run never ends, the plan’s does', async () => {
	const free = await freeRun();
	await free.go(9);
	await free.next();
	// One more, or before it a worked one.
	const added = free.run?.tasks.slice(10).map(({ standing }) => standing) ?? [];
	expect([['open'], ['shown', 'open']]).toContainEqual(added);
	expect(free.run?.at).toBe(10);
	expect(free.atEnd).toBe(false);
	const planned = await plannedRun();
	await planned.go(999);
	expect(planned.atEnd).toBe(true);
	const { run } = planned;
	await planned.next();
	expect(planned.run?.at).toBe(run?.at);
});
