import type { Chance } from '../chance.ts';
import type { Ground } from '../ground.ts';
import { FIRST_TRY, type Learner, type World } from '../learner.ts';

const GUESS = 0.05;
const SLIP = 0.1;

interface Trace {
	known: boolean;
	day: number;
	/** Reviews a day or more apart while known; each makes forgetting rarer. */
	spaced: number;
}

/**
 * A skill is known or not. A try teaches it with a chance of 0.12 to 0.32 by skill; what is known is
 * forgotten at 0.08 a day (spread 0.3), less after every spaced review. Known skills still slip one
 * time in ten, unknown ones are guessed one time in twenty. Known at the start: 35 %.
 */
export const knowledgeTracing: World = {
	id: 'knowledge-tracing',
	label: 'Knowledge tracing, forgetting',
	learner(chance: Chance, ground: Ground): Learner {
		const rate = 0.08 * Math.exp(0.3 * chance.normal());
		const teach = Array.from({ length: ground.skills }, () => 0.12 + 0.2 * chance.uniform());
		const traces: Trace[] = teach.map(() => ({
			known: chance.uniform() < FIRST_TRY,
			day: 0,
			spaced: 0
		}));
		const kept = (t: Trace, day: number) =>
			t.known ? Math.exp((-rate / (1 + 0.9 * t.spaced)) * (day - t.day)) : 0;
		const at = (skill: number): Trace => traces[skill] ?? { known: false, day: 0, spaced: 0 };
		return {
			chance(skill, day) {
				const p = kept(at(skill), day);
				return p * (1 - SLIP) + (1 - p) * GUESS;
			},
			answer(skill, day) {
				const t = at(skill);
				t.known = chance.uniform() < kept(t, day);
				const right = chance.uniform() < (t.known ? 1 - SLIP : GUESS);
				if (t.known && day - t.day >= 1) t.spaced++;
				if (!t.known) t.known = chance.uniform() < (teach[skill] ?? 0);
				t.day = day;
				return right;
			}
		};
	}
};
