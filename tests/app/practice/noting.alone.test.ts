import { beforeEach, expect, test, vi } from 'vitest';
import { logbook } from '../../../src/lib/app/device/logbook.ts';
import type { AttemptFacts } from '../../../src/lib/app/device/device.svelte.ts';
import { startFree } from '../../../src/lib/app/practice/free-run.ts';
import { Practice } from '../../../src/lib/app/practice/practice.svelte.ts';
import { rightAnswers, wrongAnswers } from '../../browser/keyboard.ts';
import { samAtWork } from '../at-work.ts';

/* An answer is noted once its stamp is on the screen: what happens in between? */

samAtWork();

let recorded: AttemptFacts[] = [];

const screen = vi.hoisted(() => ({ frame: [] as (() => void)[] }));
vi.mock('../../../src/lib/ui/sheet/painted.ts', () => ({
	painted: () => new Promise<void>((resolve) => screen.frame.push(resolve))
}));

/** The next frame is on the screen, once `answers` wait for it. */
async function paint(answers: number): Promise<void> {
	await vi.waitUntil(() => screen.frame.length >= answers);
	for (const one of screen.frame.splice(0)) one();
}

beforeEach(() => {
	recorded = [];
	vi.spyOn(logbook, 'record').mockImplementation((facts) => {
		recorded.push(facts);
		return Promise.resolve(true);
	});
	screen.frame.length = 0;
});

async function freeRun(): Promise<Practice> {
	const practice = new Practice();
	await startFree(practice, 'rivets', 2);
	return practice;
}

/** Checks the open task; what is returned notes the answer. */
async function check(practice: Practice, right: boolean): Promise<() => Promise<void>> {
	const { work } = practice;
	if (!work) throw new Error('no task is open');
	const answers = right ? rightAnswers(work.task) : wrongAnswers(work.task);
	for (const line of work.lines) line.type(answers[line.key] ?? '');
	const made = await work.check();
	if (!made) throw new Error('not read');
	return () => practice.checked(made);
}

test('an answer stands with its own task, however soon the next one is opened', async () => {
	const practice = await freeRun();
	const first = practice.number;
	const noted = (await check(practice, true))();
	await practice.next();
	expect(practice.number).not.toBe(first);
	await paint(1);
	await noted;
	const [one, two] = practice.run?.tasks ?? [];
	expect(one).toMatchObject({ number: first, standing: 'right' });
	expect(two?.standing).toBe('open');
	expect(recorded.map(({ task }) => task)).toEqual([first]);
	// It is told of the answer, and not of the task that is open now.
	expect(practice.saved).toBe('none');
});

test('two checks in one frame are one miss and a second try', async () => {
	const practice = await freeRun();
	const wrong = (await check(practice, false))();
	const right = (await check(practice, true))();
	await paint(2);
	await Promise.all([wrong, right]);
	expect(practice.run?.tasks[0]?.standing).toBe('helped');
	expect(recorded.map(({ verdicts }) => Object.keys(verdicts).length > 0)).toEqual([true, true]);
});
