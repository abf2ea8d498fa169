import type { Page } from 'playwright-core';
import seedrandom from 'seedrandom';
import { loadFamilies } from '../../src/lib/engine/families/catalogue.ts';
import { writeTaskNumber } from '../../src/lib/engine/tasks/task-number.ts';
import { isoOf } from '../../src/lib/engine/schedule/day.ts';
import type { Attempt, KnownEvent } from '../../src/lib/engine/schedule/event.ts';
import { skillWords } from '../../src/lib/engine/schedule/skill-words.ts';
import { syllabusOf } from '../../src/lib/engine/schedule/syllabus.ts';

export const learner = '5a000000-0000-4000-8000-000000000001';

/** How much a log is to hold. */
interface LogSize {
	/** Day of the first run. */
	readonly start: number;
	/** Day after the last one. */
	readonly end: number;
	/** Days without practice between two with. */
	readonly rest?: number;
	readonly tasks: number;
}

/**
 * A log of somebody who gets better with practice and makes the slips of the methods on the way:
 * one run a day, and a second try at every miss.
 */
export async function someLog(size: LogSize): Promise<Attempt[]> {
	const random = seedrandom('a log');
	const families = await loadFamilies();
	const { kinds } = syllabusOf(families);
	const words = skillWords(families.map(({ method }) => method));
	const tries = new Map<string, number>();
	const log: Attempt[] = [];

	const answer = (skill: string): Attempt['skills'][number] => {
		const n = (tries.get(skill) ?? 0) + 1;
		tries.set(skill, n);
		if (random() < 0.9 - 0.6 / n) return { skill, result: 'right' };
		const [slip] = words.get(skill)?.slips.keys() ?? [];
		return { skill, result: 'wrong', ...(slip === undefined ? {} : { slip }) };
	};
	const write = (day: number, facts: Pick<Attempt, 'task' | 'givens' | 'skills' | 'verdicts'>) => {
		const source = day % 3 === 0 ? 'practice' : 'plan';
		const at = (day * 24 + 17) * 3_600_000 + (log.length % 1000) * 60_000;
		log.push({
			...{ type: 'attempt', v: 1, learner, at, day: isoOf(day), runId: `run ${day}`, source },
			id: `a0000000-0000-4000-8000-${String(log.length).padStart(12, '0')}`,
			...{ typed: {}, opened: [], byStep: false, worked: false, seconds: 60 + 120 * random() },
			...facts
		});
	};
	for (let day = size.start; day < size.end; day += 1 + (size.rest ?? 0)) {
		for (let n = 0; n < size.tasks; n++) {
			const kind = kinds[Math.floor(random() * Math.min(kinds.length, 9 + log.length / 8))];
			const family = families.find(({ code }) => code === kind?.family);
			if (!kind || !family) continue;
			const seed = log.length;
			const level = Number(kind.id[2]) === 1 ? 1 : 2;
			const task = writeTaskNumber({ code: family.code, level, seed, rev: family.rev });
			const givens = `${task}`;
			const skills = kind.skills.map(answer);
			const missed = skills.filter(({ result }) => result !== 'right');
			write(day, { task, givens, skills, verdicts: { it: missed.length > 0 ? rework : accept } });
			if (missed.length === 0) continue;
			const again = missed.map(({ skill }) => ({ skill, result: 'helped' as const }));
			const settled = random() < 0.7;
			write(day, {
				task,
				givens,
				skills: settled ? again : [],
				verdicts: { it: settled ? accept : rework }
			});
		}
	}
	return log;
}

const accept = { kind: 'accept', carried: false } as const;
const rework = { kind: 'rework', cause: 'unknown', slips: [] as string[] } as const;

/** Puts a log into the store of the site as that of a learner called Sam, and opens a page on it. */
export async function openWithLog(page: Page, log: readonly KnownEvent[], path: string) {
	await page.goto('/progress/');
	// The store is open once it is known to be empty.
	await page.getByText('Do a few tasks').waitFor();
	const sam = { id: learner, nickname: 'Sam', named: { at: 0, id: '' }, created: 0, used: 1 };
	await page.evaluate(
		async ([row, events]) => {
			const db = await new Promise<IDBDatabase>((resolve, reject) => {
				const opening = indexedDB.open('bucktail');
				opening.onsuccess = () => resolve(opening.result);
				opening.onerror = () => reject(opening.error);
			});
			const tx = db.transaction(['events', 'learners', 'folds'], 'readwrite');
			tx.objectStore('learners').put({ ...row, unsaved: 0, backedUp: null });
			for (const event of events) tx.objectStore('events').put(event);
			await new Promise((resolve) => (tx.oncomplete = resolve));
			db.close();
			localStorage.setItem('bucktail.learner', row.id);
		},
		[sam, log as readonly object[]] as const
	);
	await page.goto(path);
}
