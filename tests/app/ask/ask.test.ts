import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { questionOf, replay } from '../../../src/lib/app/ask/ask.ts';
import {
	mostChecks,
	type Question,
	readQuestion,
	writeQuestion
} from '../../../src/lib/app/ask/ask-link.ts';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { writeTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';
import type { LengthUnit } from '../../../src/lib/engine/quantity/value.ts';
import { type Asked, stoppedAt } from '../../../src/lib/ui/ask/asked.ts';
import { TaskWork } from '../../../src/lib/ui/sheet/task-work.svelte.ts';

const rivetLength = 'RL1-00C8-8D';

async function workOn(number: string, units: () => LengthUnit = () => 'in'): Promise<TaskWork> {
	return new TaskWork(await taskFromNumber(number), units);
}

/** Types into the fields, one after another where the texts name no steps. */
function type(work: TaskWork, ...texts: string[]): void {
	for (const [i, text] of texts.entries()) work.lines[i]?.type(text);
}

/** The question as the instructor's browser shows it. */
async function sent(work: TaskWork, units: LengthUnit = 'in'): Promise<Asked> {
	const reading = await readQuestion(await writeQuestion(await questionOf(work, units)));
	if (!reading.ok) throw new Error(reading.sentence);
	const asking = await replay(reading.question);
	if (!asking.ok) throw new Error(asking.sentence);
	return asking.asked;
}

describe('what the instructor sees', () => {
	test('are the same entries with the same verdicts, in every family', async () => {
		for (const { code, rev } of cards) {
			const work = await workOn(writeTaskNumber({ code, level: 2, seed: 4, rev }));
			for (const text of ['97.7', '1/8']) {
				for (const line of work.lines) line.type(line.choices[0] ?? text);
				await work.check();
			}
			const asked = await sent(work);
			const shown = asked.checks.map(({ lines }) =>
				Object.fromEntries(lines.map(({ key, verdict }) => [key, verdict]))
			);
			expect(shown, code).toEqual(work.checks.map(({ verdicts }) => verdicts));
			expect(asked.checks.map(({ accepted }) => accepted)).toEqual(
				work.checks.map(({ accepted }) => accepted)
			);
		}
	});

	test('is how each entry was read, also where one of two readings was picked', async () => {
		const work = await workOn(rivetLength);
		type(work, '.3', '5');
		work.lines[1]?.pick(1);
		await work.check();
		const reading = work.lines[1]?.reading;
		if (reading?.state !== 'read') throw new Error('not read');
		const [, line] = (await sent(work)).checks[0]?.lines ?? [];
		expect(line).toMatchObject({ typed: '5', read: `read as ${reading.said}` });
	});

	test('is an entry in the units it was typed in, also after they were switched', async () => {
		let units: LengthUnit = 'mm';
		const work = await workOn(rivetLength, () => units);
		type(work, '9', '12.7');
		await work.check();
		units = 'in';
		const asked = await sent(work, 'in');
		expect(asked.checks[0]?.lines[1]?.read).toContain('12.7 mm');
		expect(asked.checks[0]?.lines[1]?.verdict).toEqual(work.checks[0]?.verdicts.length);
	});

	test('is arithmetic worked out', async () => {
		const work = await workOn(rivetLength);
		type(work, '.3', '1/8 + 1/16');
		await work.check();
		expect((await sent(work)).checks[0]?.lines[1]?.read).toContain('3/16 in');
	});

	test('are the steps opened, before each check and now', async () => {
		const work = await workOn(rivetLength);
		type(work, '97.7', '97.7');
		await work.check();
		work.openStep();
		await work.check();
		work.openStep();
		const asked = await sent(work);
		expect(asked.checks.map(({ opened }) => opened)).toEqual([0, 1]);
		expect(asked.opened).toBe(2);
	});

	test('is what was typed and not checked, read as far as it can be', async () => {
		const work = await workOn(rivetLength);
		type(work, '97.7', '97.7');
		await work.check();
		expect((await sent(work)).open).toEqual([]);
		type(work, '97.7', 'half an inch or so');
		expect((await sent(work)).open).toMatchObject([
			{ typed: '97.7' },
			{ typed: 'half an inch or so', read: 'could not be read', verdict: null }
		]);
	});

	test('are the newest checks when there were many', async () => {
		const work = await workOn(rivetLength);
		for (let n = 1; n <= mostChecks + 2; n++) {
			type(work, '97.7', '97.7');
			await work.check();
		}
		type(work, '98.8', '98.8');
		await work.check();
		const asked = await sent(work);
		expect(asked.before).toBe(3);
		expect(asked.checks.at(-1)?.lines[0]?.typed).toBe('98.8');
	});
});

describe('where the working stopped', () => {
	test('before anything was checked', async () => {
		const work = await workOn(rivetLength);
		expect(stoppedAt(await sent(work))).toBe('Nothing was checked.');
		work.openStep();
		expect(stoppedAt(await sent(work))).toBe('Steps were opened; nothing was checked.');
	});

	test('at the step that the slip sits in', async () => {
		const work = await workOn(rivetLength);
		const { right } = work.task;
		// The stack alone, up to the next sixteenth.
		type(work, String(right.grip), String(Math.ceil(Number(right.grip) * 16) / 16));
		await work.check();
		expect(work.last?.verdicts.needed).toMatchObject({ cause: { kind: 'slip' } });
		expect(stoppedAt(await sent(work))).toMatch(/^At the step “.+”\.$/);
	});

	test('at the next step, when all entered so far are right', async () => {
		const work = await workOn(rivetLength);
		work.byStep = true;
		type(work, String(work.task.right.grip));
		await work.check();
		expect(stoppedAt(await sent(work))).toBe('Before the step “Shank for the shop head”.');
	});

	test('nowhere, when it was right or shown', async () => {
		const work = await workOn(rivetLength);
		type(work, String(work.task.right.needed), String(work.task.right.length));
		await work.check();
		expect(stoppedAt(await sent(work))).toContain('The answer was right');
		work.worked = true;
		expect(stoppedAt(await sent(work))).toBe('The whole working was shown.');
	});
});

describe('a link made by hand', () => {
	const bare: Question = {
		task: rivetLength,
		units: 'in',
		opened: 0,
		byStep: false,
		worked: false,
		before: 0,
		checks: [],
		open: {},
		note: ''
	};

	test.each(['RL1-0004-1C', 'ZZ1-0004-1B', '', '<b>'])(
		'with the task number “%s” gets its one sentence',
		async (task) => {
			const asking = await replay({ ...bare, task });
			expect(asking).toMatchObject({ ok: false });
			if (!asking.ok) expect(asking.sentence).toMatch(/^[A-Z].+\.$/);
		}
	);

	test('with any entries in any steps is shown, and nothing is claimed', async () => {
		const key = fc.constantFrom('length', 'grip', 'shank', 'needed', 'constructor', 'toString');
		const typed = fc.dictionary(key, fc.string({ maxLength: 60, unit: 'binary' }));
		const check = fc.record({
			typed,
			picked: fc.dictionary(key, fc.nat({ max: 99 })),
			units: fc.constantFrom('in' as const, 'mm' as const),
			opened: fc.nat({ max: 99 }),
			byStep: fc.boolean()
		});
		await fc.assert(
			fc.asyncProperty(fc.array(check, { maxLength: 3 }), typed, async (checks, open) => {
				const asking = await replay({ ...bare, checks, open });
				if (!asking.ok) throw new Error(asking.sentence);
				expect(asking.asked.checks.length).toBe(checks.length);
				expect(stoppedAt(asking.asked)).toMatch(/\.$/);
			})
		);
	});
});
