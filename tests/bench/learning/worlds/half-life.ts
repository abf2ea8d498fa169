import type { Chance } from '../chance.ts';
import type { Ground } from '../ground.ts';
import { FIRST_TRY, type Learner, type World } from '../learner.ts';

interface Trace {
	readonly halfLife: number;
	readonly day: number;
}

/**
 * Recall halves every half-life. A success lengthens it, the more so the closer to forgetting it
 * came (spacing gain); a failure shortens it. First half-life 1.5 days, lognormal spread 0.4 between
 * learners and 0.3 between skills.
 */
export const halfLife: World = {
	id: 'half-life',
	label: 'Half-life, spacing gain',
	learner(chance: Chance, ground: Ground): Learner {
		const own = 1.5 * Math.exp(0.4 * chance.normal());
		const first = Array.from(
			{ length: ground.skills },
			() => own * Math.exp(0.3 * chance.normal())
		);
		const traces = new Map<number, Trace>();
		const after = (skill: number, p: number, right: boolean): number => {
			const h0 = first[skill] ?? own;
			const h = traces.get(skill)?.halfLife;
			if (h === undefined) return right ? 1.5 * h0 : h0;
			return right ? h * (1.15 + 2.2 * (1 - p)) : Math.max(h0, h * (0.6 + 0.6 * (1 - p)));
		};
		const learner: Learner = {
			chance(skill, day) {
				const trace = traces.get(skill);
				return trace ? 2 ** (-(day - trace.day) / trace.halfLife) : FIRST_TRY;
			},
			answer(skill, day) {
				const p = learner.chance(skill, day);
				const right = chance.uniform() < p;
				traces.set(skill, { halfLife: after(skill, p, right), day });
				return right;
			}
		};
		return learner;
	}
};
