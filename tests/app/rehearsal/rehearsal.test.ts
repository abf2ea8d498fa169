import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { device, type SettledAttempt } from '../../../src/lib/app/device/device.svelte.ts';
import { logbook } from '../../../src/lib/app/device/logbook.ts';
import { type Paper, readPaper } from '../../../src/lib/app/rehearsal/rehearsal-paper.ts';
import { Rehearsal } from '../../../src/lib/app/rehearsal/rehearsal.svelte.ts';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { givensOf, numbersIn } from '../../../src/lib/engine/tasks/givens.ts';
import { emptyLearning } from '../../../src/lib/engine/schedule/learning.ts';
import { readTaskNumber, writeTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';
import { composeRehearsal } from '../../../src/lib/engine/sets/rehearsal.ts';
import { atWork, samAtWork } from '../at-work.ts';

const morning = Date.UTC(2026, 10, 25, 9);
const kept = samAtWork();
/** The log, by id as the store keeps it. */
const log = new Map<string, SettledAttempt>();
let written = 0;

async function record(attempts: readonly SettledAttempt[]): Promise<boolean> {
	written++;
	for (const attempt of attempts) if (!log.has(attempt.id)) log.set(attempt.id, attempt);
	return true;
}

beforeEach(() => {
	vi.useFakeTimers({ now: morning });
	log.clear();
	written = 0;
	vi.spyOn(logbook, 'recordAll').mockImplementation(record);
});

afterEach(() => vi.useRealTimers());

/** Time goes by, with the page open. */
async function wait(rehearsal: Rehearsal, seconds: number): Promise<void> {
	vi.setSystemTime(Date.now() + seconds * 1000);
	await rehearsal.tick();
}

/** The page is opened, by another tab or after it was closed. */
async function opened(): Promise<Rehearsal> {
	const rehearsal = new Rehearsal();
	await rehearsal.load();
	return rehearsal;
}

async function started(count = 10, minutes = 20): Promise<Rehearsal> {
	const rehearsal = await opened();
	await rehearsal.start(count, minutes);
	return rehearsal;
}

function keptPaper(owner = 'sam'): Paper | null {
	const paper = readPaper(kept.get(`bucktail.rehearsal.${owner}`) ?? null);
	return paper === 'outdated' ? null : paper;
}

/** Chooses the right option of a question, or one that is not. */
function answer(rehearsal: Rehearsal, index: number, right: boolean): void {
	rehearsal.go(index);
	const question = rehearsal.questions[index];
	if (!question) throw new Error(`no question ${index}`);
	const { options } = question;
	rehearsal.choose(right ? question.right : (question.right + 1) % options.length);
}

describe('while it runs', () => {
	test('every change is kept', async () => {
		const rehearsal = await started();
		expect(rehearsal.stage).toBe('running');
		answer(rehearsal, 3, true);
		rehearsal.mark();
		expect(keptPaper()).toEqual(rehearsal.paper);
		expect(keptPaper()).toMatchObject({ at: 3, length: 1200, start: morning, end: null });
		expect(keptPaper()?.later[3]).toBe(true);
		rehearsal.mark();
		expect(keptPaper()?.later[3]).toBe(false);
	});

	test('a question gets the time it was open, and not the time away', async () => {
		const rehearsal = await started();
		await wait(rehearsal, 40);
		rehearsal.go(1);
		await wait(rehearsal, 15);
		rehearsal.leave();
		await wait(rehearsal, 300);
		rehearsal.look();
		await wait(rehearsal, 5);
		rehearsal.go(0);
		expect(rehearsal.paper?.seconds.slice(0, 2)).toEqual([40, 20]);
		expect(rehearsal.left).toBe(1200 - 360);
	});

	test('there is no question before the first or after the last', async () => {
		const rehearsal = await started();
		rehearsal.go(-1);
		expect(rehearsal.paper?.at).toBe(0);
		rehearsal.go(10);
		expect(rehearsal.paper?.at).toBe(9);
	});
});

describe('after the tab was closed', () => {
	test('it is offered again, with the same questions and the time that is left', async () => {
		const before = await started();
		answer(before, 2, true);
		await wait(before, 60);
		before.leave();
		vi.setSystemTime(Date.now() + 300_000);
		const after = await opened();
		expect(after.stage).toBe('offer');
		expect(after.left).toBe(1200 - 360);
		expect(after.questions.map(({ task }) => task.number)).toEqual(
			before.questions.map(({ task }) => task.number)
		);
		after.resume();
		expect(after.paper).toMatchObject({ at: 2, choices: before.paper?.choices });
		await wait(after, 7);
		after.go(0);
		expect(after.paper?.seconds[2]).toBe(67);
	});

	test('and the time ran out meanwhile, it is handed in as of then', async () => {
		const before = await started();
		answer(before, 0, true);
		vi.setSystemTime(morning + 8 * 3_600_000);
		const after = await opened();
		expect(after.stage).toBe('report');
		expect(after.paper?.end).toBe(morning + 1_200_000);
		expect(after.result?.all).toEqual({ right: 1, of: 10 });
		expect(log.size).toBe(10);
		expect([...log.values()][0]?.at).toBe(morning + 1_200_000);
	});

	test('the offer too ends when the time is over', async () => {
		await started();
		const after = await opened();
		await wait(after, 1200);
		expect(after.stage).toBe('report');
		expect(log.size).toBe(10);
	});

	test('it asks what it asked, whatever the seed would deal now', async () => {
		const before = await started();
		const id = '00000000-0000-4000-8000-000000000000';
		kept.set('bucktail.rehearsal.sam', JSON.stringify({ ...before.paper, id }));
		const after = await opened();
		expect(after.stage).toBe('offer');
		expect(after.questions).toEqual(before.questions);
	});

	test('it is not gone on with when a family would now draw something else', async () => {
		const before = await started();
		const [first, ...rest] = before.paper?.questions ?? [];
		const { id } = before.questions[0]?.task ?? {};
		if (!first || !id) throw new Error('no question');
		const questions = [{ ...first, task: writeTaskNumber({ ...id, rev: 31 }) }, ...rest];
		kept.set('bucktail.rehearsal.sam', JSON.stringify({ ...before.paper, questions }));
		const after = await opened();
		expect(after).toMatchObject({ stage: 'set-up', outdated: true, paper: null });
		await after.start(10, 20);
		expect(after.outdated).toBe(false);
	});
});

describe('handing in', () => {
	test('happens by itself when the time is over, and once', async () => {
		const rehearsal = await started();
		answer(rehearsal, 0, false);
		await wait(rehearsal, 1199);
		expect(rehearsal.stage).toBe('running');
		await wait(rehearsal, 2);
		expect(rehearsal).toMatchObject({ stage: 'report', saved: 'saved' });
		await wait(rehearsal, 60);
		await rehearsal.handIn();
		expect(written).toBe(1);
		expect(keptPaper()).toMatchObject({ logged: true, end: morning + 1_200_000 });
	});

	test('puts one attempt a question into the log, misses with their skills', async () => {
		const rehearsal = await started();
		for (let i = 0; i < 8; i++) answer(rehearsal, i, i < 5);
		await rehearsal.handIn();
		expect(rehearsal.result?.all).toEqual({ right: 5, of: 10 });
		const facts = [...log.values()].map((attempt) => attempt.facts);
		expect(facts.map(({ task }) => task)).toEqual(
			rehearsal.questions.map(({ task }) => task.number)
		);
		const wrong = facts.filter(({ skills }) => skills.some(({ result }) => result === 'wrong'));
		expect(wrong.length).toBe(3);
		expect(new Set(facts.map(({ source, runId }) => `${source} ${runId}`)).size).toBe(1);
	});

	test('is finished after the tab was closed in the middle of it', async () => {
		const before = await started();
		answer(before, 0, true);
		vi.mocked(logbook.recordAll).mockReturnValueOnce(new Promise(() => {}));
		void before.handIn();
		expect(keptPaper()).toMatchObject({ logged: false, end: morning });
		const after = await opened();
		expect(after).toMatchObject({ stage: 'report', saved: 'saved' });
		expect(log.size).toBe(10);
		expect((await opened()).stage).toBe('set-up');
	});

	test('twice, in two tabs, leaves one attempt a question', async () => {
		const one = await started();
		const two = await opened();
		two.resume();
		await wait(one, 1200);
		await wait(two, 0);
		expect(written).toBe(2);
		expect(log.size).toBe(10);
	});

	test('that could not be saved is tried again', async () => {
		const rehearsal = await started();
		vi.mocked(logbook.recordAll).mockResolvedValueOnce(false);
		await rehearsal.handIn();
		expect(rehearsal.saved).toBe('failed');
		expect(keptPaper()?.logged).toBe(false);
		await rehearsal.log();
		expect(rehearsal.saved).toBe('saved');
		expect(log.size).toBe(10);
	});
});

describe('another tab', () => {
	test('shows at once what was answered in the first', async () => {
		const one = await started();
		const two = await opened();
		two.resume();
		answer(one, 4, true);
		const newValue = kept.get('bucktail.rehearsal.sam') ?? null;
		await two.heard({ key: 'bucktail.rehearsal.sam', newValue });
		expect(two.stage).toBe('running');
		expect(two.paper).toEqual(one.paper);
	});

	test('shows the report when the first hands in', async () => {
		const one = await started();
		const two = await opened();
		two.resume();
		await one.handIn();
		const newValue = kept.get('bucktail.rehearsal.sam') ?? null;
		await two.heard({ key: 'bucktail.rehearsal.sam', newValue });
		expect(two.stage).toBe('report');
		expect(log.size).toBe(10);
	});

	test('that has the answers in the log leaves the report on the page', async () => {
		const one = await started();
		const two = await opened();
		two.resume();
		await one.handIn();
		const logged = kept.get('bucktail.rehearsal.sam') ?? '';
		const newValue = JSON.stringify({ ...JSON.parse(logged), logged: false });
		// The second hears of the hand-in, and while it shows the report, that all is in the log.
		await two.heard({ key: 'bucktail.rehearsal.sam', newValue });
		await two.heard({ key: 'bucktail.rehearsal.sam', newValue: logged });
		expect(two).toMatchObject({ stage: 'report', saved: 'saved' });
	});

	test('of another learner is not listened to', async () => {
		const one = await started();
		const newValue = JSON.stringify({ ...one.paper, at: 5 });
		await one.heard({ key: 'bucktail.rehearsal.kit', newValue });
		expect(one.paper?.at).toBe(0);
	});
});

describe('learners', () => {
	test('each have a rehearsal of their own', async () => {
		await started();
		atWork('kit');
		expect((await opened()).stage).toBe('set-up');
		atWork('sam');
		expect((await opened()).stage).toBe('offer');
	});

	test('nothing is kept for one who is no longer at work', async () => {
		const rehearsal = await started();
		atWork('kit');
		kept.clear();
		answer(rehearsal, 1, true);
		await rehearsal.handIn();
		expect(kept.size).toBe(0);
		expect(log.size).toBe(0);
	});

	test('the first one on a device takes over what was begun before', async () => {
		atWork(null);
		const before = await started();
		expect(keptPaper('first')).toEqual(before.paper);
		atWork('sam');
		const after = await opened();
		expect(after.stage).toBe('offer');
		after.resume();
		after.go(1);
		expect(keptPaper('first')).toBeNull();
		expect(keptPaper()?.at).toBe(1);
	});
});

test('a paper that does not say what its questions were is said to be outdated', async () => {
	const { questions, ...rest } = (await started()).paper ?? {};
	expect(questions).toHaveLength(10);
	// The first edition kept a checksum in their place.
	kept.set('bucktail.rehearsal.sam', JSON.stringify({ ...rest, check: '1f2e3d' }));
	expect(await opened()).toMatchObject({ stage: 'set-up', outdated: true, paper: null });
});

test('a paper whose tasks are of an older revision is said to be outdated', async () => {
	const { paper } = await started();
	const [first, ...others] = paper?.questions ?? [];
	const { code, level, seed } = readTaskNumber(first?.task ?? '');
	const old = { ...first, task: writeTaskNumber({ code, level, seed, rev: 0 }) };
	kept.set('bucktail.rehearsal.sam', JSON.stringify({ ...paper, questions: [old, ...others] }));
	expect(await opened()).toMatchObject({ stage: 'set-up', outdated: true, paper: null });
});

test('numbers of the newest tasks are kept out of a new rehearsal', async () => {
	const families = await loadFamilies();
	const newest = ['one', 'two', 'three'].flatMap((seed) =>
		composeRehearsal(seed, families, 50).map(({ task }) => givensOf(task))
	);
	device.learning = { ...emptyLearning(), givens: newest };
	const stale = new Set(newest.map(numbersIn));
	const repeated = (questions: Rehearsal['questions']) =>
		questions.filter(({ task }) => stale.has(numbersIn(givensOf(task)))).length;
	let [fresh, blind] = [0, 0];
	for (let n = 0; n < 12; n++) {
		fresh += repeated((await started(30, 60)).questions);
		blind += repeated(composeRehearsal(`blind ${n}`, families, 30));
	}
	// Otherwise there would be nothing to keep out.
	expect(blind).toBeGreaterThan(8);
	expect(fresh).toBeLessThan(blind / 2);
});
