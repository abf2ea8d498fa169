import type { Chance } from '../chance.ts';
import type { Ground } from '../ground.ts';
import type { Learner, World } from '../learner.ts';

const GUESS = 0.1;
const SLIP = 0.08;

interface Trace {
	/** Share of the skill in hand, 0..1, on `day`. */
	hold: number;
	day: number;
	/** Days until half of it is gone. */
	halfLife: number;
}

/**
 * Skills rest on one another: a task is right when the skill and what it needs are in hand, barring
 * slips (8 %) and guesses (10 %). Up to a quarter of a skill is there at the start. A try, right or
 * wrong, brings a share of what is missing (0.35, spread 0.3), less where the needs are shaky. What is
 * in hand halves in 6 days at first (spread 0.4 between learners, 0.3 between skills), and every try
 * on a later day makes that 1.6 times as long.
 */
export const prerequisites: World = {
	id: 'prerequisites',
	label: 'Prerequisites, slips, guesses',
	learner(chance: Chance, ground: Ground): Learner {
		const rate = Math.min(0.8, 0.35 * Math.exp(0.3 * chance.normal()));
		const firstHalfLife = 6 * Math.exp(0.4 * chance.normal());
		const traces: Trace[] = Array.from({ length: ground.skills }, () => ({
			hold: 0.25 * chance.uniform(),
			day: 0,
			halfLife: firstHalfLife * Math.exp(0.3 * chance.normal())
		}));
		const held = (skill: number, day: number): number => {
			const t = traces[skill];
			return t ? t.hold * 2 ** (-(day - t.day) / t.halfLife) : 0;
		};
		const grounded = (skill: number, day: number): number =>
			(ground.needs[skill] ?? []).reduce((p, need) => p * held(need, day), 1);
		const learner: Learner = {
			chance(skill, day) {
				return GUESS + (1 - GUESS - SLIP) * held(skill, day) * grounded(skill, day);
			},
			answer(skill, day) {
				const right = chance.uniform() < learner.chance(skill, day);
				const t = traces[skill];
				if (t) {
					const hold = held(skill, day);
					const reach = rate * (0.3 + 0.7 * grounded(skill, day));
					if (day - t.day >= 1) t.halfLife *= 1.6;
					t.hold = hold + reach * (1 - hold);
					t.day = day;
				}
				return right;
			}
		};
		return learner;
	}
};
