import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadPlanner } from '../../src/lib/app/plan/planner.ts';
import { readLog } from '../../src/lib/app/progress/progress.ts';
import { courseFold } from '../../src/lib/engine/schedule/course-fold.ts';
import type { CourseSettings } from '../../src/lib/engine/schedule/course-settings.ts';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import { type Attempt, type KnownEvent, knownEvent } from '../../src/lib/engine/schedule/event.ts';
import { type Learning, learningFold } from '../../src/lib/engine/schedule/learning.ts';
import {
	currentSkill,
	currentSlip,
	oldSkills,
	oldSlips
} from '../../src/lib/engine/schedule/old-skills.ts';
import { givensOf } from '../../src/lib/engine/tasks/givens.ts';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { readBackup } from '../../src/lib/storage/backup-file.ts';
import { foldOver } from '../../src/lib/storage/fold.ts';

/*
 * A log written by the version of 2026-11-26, and what that version made of it: twelve days of one
 * learner, with every family at every level, every skill, and every slip that its tasks showed.
 * The files never change. Where ids have changed since, `old-skills.ts` leads from the old to the
 * new, and what the log says must stay the same.
 */

/** What the version that wrote the log made of it, and the ids it went by. */
interface Stored {
	readonly learning: Learning;
	readonly course: CourseSettings;
	readonly slipHistory: readonly {
		readonly skill: string;
		readonly slip: string;
		readonly times: number;
	}[];
	readonly skills: readonly { readonly id: string; readonly label: string }[];
	readonly slips: readonly { readonly skill: string; readonly slip: string }[];
}

const stored = JSON.parse(fileText('state.json')) as Stored;
const events = eventsOf(fileText('backup.json'));
const planner = await loadPlanner();
const newIds = new Set(planner.syllabus.skills.map(({ id }) => id));

function fileText(name: string): string {
	return readFileSync(new URL(`../data/2026-11-26/${name}`, import.meta.url), 'utf8');
}

/** The events as a restore takes them in. */
function eventsOf(text: string): KnownEvent[] {
	const reading = readBackup(text);
	if (!reading.ok) throw new Error(reading.sentence);
	return reading.backup.learners.flatMap((learner) =>
		learner.events.map((event) => {
			const known = knownEvent(event);
			if (!known) throw new Error(`no fold sees ${event.type} ${event.id}`);
			return known;
		})
	);
}

/** The event as a version that has the new ids would have written it. */
function renamed(event: KnownEvent): KnownEvent {
	return event.type === 'attempt' ? { ...event, skills: event.skills.map(renamedIn) } : event;
}

function renamedIn({ skill, result, slip }: Attempt['skills'][number]): Attempt['skills'][number] {
	const now = { skill: currentSkill(skill), result };
	return slip === undefined ? now : { ...now, slip: currentSlip(skill, slip) };
}

/** The old ids that one new skill took over. */
function oldIdsOf(skill: string): string[] {
	return stored.skills.map(({ id }) => id).filter((id) => currentSkill(id) === skill);
}

describe('ids of that version lead to something that is there', () => {
	test('every skill', () => {
		const lost = stored.skills.filter(({ id }) => !newIds.has(currentSkill(id)));
		expect(lost.map(({ id, label }) => `${id} (${label})`)).toEqual([]);
	});

	test('every slip, with a sentence', () => {
		const lost = stored.slips.filter(
			({ skill, slip }) => planner.slipSays(currentSkill(skill), currentSlip(skill, slip)) === ''
		);
		expect(lost.map(({ skill, slip }) => `${skill} ${slip}`)).toEqual([]);
	});

	test('the table has no old id that was none', () => {
		const skills = new Set(stored.skills.map(({ id }) => id));
		const slips = new Set(stored.slips.map(({ skill, slip }) => `${skill} ${slip}`));
		const slipLines = Object.entries(oldSlips).flatMap(([skill, lines]) =>
			Object.keys(lines).map((slip) => `${skill} ${slip}`)
		);
		expect(Object.keys(oldSkills).filter((id) => !skills.has(id))).toEqual([]);
		expect(slipLines.filter((line) => !slips.has(line))).toEqual([]);
	});
});

describe('the log still says', () => {
	const learning = foldOver(learningFold, events);

	test('what was done when, how fast, and for which course', () => {
		const bySkill = { memories: {}, slips: {} };
		expect({ ...learning, ...bySkill }).toEqual({ ...stored.learning, ...bySkill });
		expect(foldOver(courseFold, events)).toEqual(stored.course);
	});

	test('how well every skill is known', () => {
		const joined = foldOver(learningFold, events.map(renamed));
		const now = [...new Set(stored.skills.map(({ id }) => currentSkill(id)))];
		expect(Object.keys(learning.memories).sort()).toEqual(now.sort());
		for (const skill of now) {
			const [old = '', ...others] = oldIdsOf(skill);
			// Where skills became one, as if all their answers had been given to that one, in time order.
			const expected =
				others.length > 0 ? joined.memories : { [skill]: stored.learning.memories[old] };
			expect(learning.memories[skill], skill).toEqual(expected[skill]);
		}
	});

	test('which slip was made last in a skill', () => {
		const joined = foldOver(learningFold, events.map(renamed));
		for (const skill of newIds) {
			const [old = '', ...others] = oldIdsOf(skill);
			const note = stored.learning.slips[old];
			const same = note && { ...note, slip: currentSlip(old, note.slip) };
			expect(learning.slips[skill], skill).toEqual(others.length > 0 ? joined.slips[skill] : same);
		}
	});

	test('how often each slip was made, on the progress page', async () => {
		const today = dayOf('2026-11-26');
		const { signal } = new AbortController();
		const reading = await readLog(inTurn(events), { planner, today, signal, onRead: () => {} });
		const then = stored.slipHistory.map(({ skill, slip, times }) => ({
			says: planner.slipSays(currentSkill(skill), currentSlip(skill, slip)),
			times
		}));
		expect(timesBySentence(reading?.slips ?? [])).toEqual(timesBySentence(then));
	});

	test('which numbers a task had, as long as its family has the same revision', async () => {
		for (const event of events) {
			if (event.type !== 'attempt') continue;
			const givens = await givensNow(event.task);
			expect(givens, event.task).toBe(givens === 'other revision' ? givens : event.givens);
		}
	});
});

async function* inTurn(list: readonly KnownEvent[]): AsyncGenerator<KnownEvent> {
	yield* list;
}

function timesBySentence(
	lines: readonly { readonly says: string; readonly times: number }[]
): Record<string, number> {
	const sums: Record<string, number> = {};
	for (const { says, times } of lines) sums[says] = (sums[says] ?? 0) + times;
	return sums;
}

async function givensNow(number: string): Promise<string> {
	try {
		return givensOf(await taskFromNumber(number));
	} catch (error) {
		if (error instanceof Error && /is of revision/.test(error.message)) return 'other revision';
		throw error;
	}
}
