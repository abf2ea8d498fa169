import { dayOf } from './day.ts';
import type { Attempt } from './event.ts';
import type { SkillId } from './skill.ts';

/** A step that is right time after time now, and was not before. */
export interface Streak {
	readonly skill: SkillId;
	/** Right answers in a row, without help. */
	readonly right: number;
	/** Misses before them, since it was last right twice in a row. */
	readonly misses: number;
	/** Day of the last of these. */
	readonly missedDay: number;
}

/** Right answers in a row, and misses before them, from which on it is worth telling. */
const least = { right: 3, misses: 2 };

interface Count {
	right: number;
	misses: number;
	missedDay: number;
}

/** What attempts, oldest first, show to be mended: the longest streaks first. */
export function streaksIn(attempts: readonly Attempt[]): Streak[] {
	const counts = new Map<SkillId, Count>();
	for (const { day, skills } of attempts) {
		for (const { skill, result } of skills) {
			const count = counts.get(skill) ?? { right: 0, misses: 0, missedDay: 0 };
			counts.set(skill, result === 'helped' ? count : after(count, result, dayOf(day)));
		}
	}
	return [...counts]
		.map(([skill, count]) => ({ skill, ...count }))
		.filter(({ right, misses }) => right >= least.right && misses >= least.misses)
		.sort((a, b) => b.right - a.right || b.misses - a.misses);
}

function after(count: Count, result: 'right' | 'wrong', day: number): Count {
	if (result === 'right') return { ...count, right: count.right + 1 };
	const before = count.right >= 2 ? 0 : count.misses;
	return { right: 0, misses: before + 1, missedDay: day };
}
