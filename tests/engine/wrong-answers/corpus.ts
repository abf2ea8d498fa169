import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import type { Family } from '../../../src/lib/engine/families/family.ts';
import { type Level, levels } from '../../../src/lib/engine/families/level.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { allRules } from './all-rules.ts';
import type { Rule, Typed } from './rule.ts';

/** Marking may be tuned on one half of the seeds only; the other half tells whether it helped. */
export const halves = ['tuning', 'held-out'] as const;
export type Half = (typeof halves)[number];

/** A wrong answer to a task, and everything that may have led somebody to it. */
export interface WrongAnswer {
	readonly task: Task;
	readonly half: Half;
	readonly typed: Typed;
	/** Different mistakes may lead to the same entries; the first is the one drawn first. */
	readonly rules: readonly [Rule, ...Rule[]];
}

interface Size {
	/** Tasks of every family and level. */
	readonly seedsEach: number;
	/** A rare mistake is made on one task in so many. */
	readonly rareOnOneIn: number;
}

/**
 * The rules of every family on tasks of every level. The same entries for the same givens count
 * once.
 */
export async function corpus(
	{ seedsEach, rareOnOneIn }: Size = { seedsEach: 12, rareOnOneIn: 3 }
): Promise<readonly WrongAnswer[]> {
	const families = await loadFamilies();
	return families.flatMap((family) => {
		const rules = allRules.filter((rule) => rule.family === family.id);
		const found = new Map<string, WrongAnswer>();
		for (const [place, { task, half }] of tasksOf(family, seedsEach).entries()) {
			for (const [at, rule] of rules.entries()) {
				if (rule.rate === 'rare' && (place + at) % rareOnOneIn !== 0) continue;
				const typed = entriesOf(rule, task);
				if (typed) add(found, { task, half, typed, rules: [rule] });
			}
		}
		return [...found.values()];
	});
}

function tasksOf(family: Family, seedsEach: number): { task: Task; half: Half }[] {
	return levels.flatMap((level) =>
		Array.from({ length: seedsEach }, (_, at) => ({
			task: drawTask(family, level, seedOf(level, at)),
			half: at % 2 === 0 ? ('tuning' as const) : ('held-out' as const)
		}))
	);
}

/** Far apart, and unlike those of the other tests. */
function seedOf(level: Level, at: number): number {
	return 17 + at * 7919 + level * 104_729;
}

/** What is typed by a rule, where the task asks for all of it. */
function entriesOf(rule: Rule, { drawn, right }: Task): Typed | null {
	if (!drawn.asked.includes(rule.key)) return null;
	// A rivet may be called out by its number, and its diameter read off that.
	const answer = rule.answer({ D: right.diameter, ...drawn.given }, right);
	if (answer === null) return null;
	const typed = typeof answer === 'string' ? { [rule.key]: answer } : answer;
	return Object.keys(typed).every((key) => drawn.asked.includes(key)) ? typed : null;
}

function add(found: Map<string, WrongAnswer>, answer: WrongAnswer): void {
	const { task, typed } = answer;
	const same = JSON.stringify([task.method.id, task.drawn.given, Object.entries(typed).sort()]);
	const known = found.get(same);
	if (!known) found.set(same, answer);
	else if (!known.rules.includes(answer.rules[0]))
		found.set(same, { ...known, rules: [...known.rules, answer.rules[0]] });
}
