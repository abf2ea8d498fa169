import type { SkillId, Syllabus } from '../schedule/skill.ts';
import { plainTerms, readWish, type Terms, termsOf, type Wish } from './compose.ts';
import { longest, type TaskSet } from './set.ts';

/** Tasks for each step that was missed. */
const each = 2;

/** The terms of a follow-up: those of the set it follows, with a title of its own and no due date. */
export function termsAgain(before: TaskSet | null): Terms {
	if (before === null) return plainTerms('What the class missed');
	const title = `${before.title}: again`.slice(0, longest.title);
	return { ...termsOf(before), title, seed: title, due: null };
}

/**
 * Tasks that practise what a class missed, the step that most missed first: for every step the two
 * easiest kinds of task that aim at it, or two of one. Where no kind aims at it, kinds that lead
 * through it. A step that is not in the syllabus gives none.
 */
export function wishesFor(syllabus: Syllabus, skills: readonly SkillId[]): Wish[] {
	const wishes = new Map<string, Wish>();
	for (const skill of skills) {
		const aimed = syllabus.kinds.filter(({ aim }) => aim === skill);
		const through = syllabus.kinds.filter((kind) => kind.skills.includes(skill));
		const kinds = (aimed.length > 0 ? aimed : through).slice(0, each);
		for (const kind of kinds) {
			const count = each / kinds.length;
			const known = wishes.get(kind.id);
			wishes.set(kind.id, { ...readWish(kind.id), count: (known?.count ?? 0) + count });
		}
	}
	return [...wishes.values()];
}
