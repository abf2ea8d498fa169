import type { Chance } from '../chance.ts';
import type { Ground } from '../ground.ts';
import { FIRST_TRY, type Learner, type World } from '../learner.ts';

/** One practice: when, and how fast its trace decays. */
interface Trace {
	readonly day: number;
	readonly decay: number;
}

const DECAY = 0.177;
const DECAY_PER_ACTIVATION = 0.217;
const NOISE = 0.255;
/** Seconds in a day times 0.025: outside a sitting time counts for less. */
const TICKS_PER_DAY = 86_400 * 0.025;
/** Half an hour inside a sitting, in days: the least age of a trace. */
const SITTING = 1 / 48;

/**
 * ACT-R-like: every practice leaves a trace that decays as a power of its age, faster when the skill
 * was fresh in mind at the time (so spacing pays); recall is logistic in the summed activation.
 * Constants from the spacing literature (Pavlik and Anderson 2005, from memory), threshold -0.704
 * with spread 0.2 between learners and 0.2 between skills, lognormal spread 0.15 of the decay.
 */
export const activation: World = {
	id: 'activation',
	label: 'ACT-R-like activation',
	learner(chance: Chance, ground: Ground): Learner {
		const threshold = -0.704 + 0.2 * chance.normal();
		const decay = DECAY * Math.exp(0.15 * chance.normal());
		const own = Array.from({ length: ground.skills }, () => threshold + 0.2 * chance.normal());
		const traces: Trace[][] = own.map(() => []);
		const strength = (skill: number, day: number): number => {
			let sum = 0;
			for (const t of traces[skill] ?? []) {
				sum += (Math.max(SITTING, day - t.day) * TICKS_PER_DAY) ** -t.decay;
			}
			return sum;
		};
		const learner: Learner = {
			chance(skill, day) {
				if (traces[skill]?.length === 0) return FIRST_TRY;
				const m = Math.log(strength(skill, day));
				return 1 / (1 + Math.exp(((own[skill] ?? threshold) - m) / NOISE));
			},
			answer(skill, day) {
				const right = chance.uniform() < learner.chance(skill, day);
				traces[skill]?.push({ day, decay: DECAY_PER_ACTIVATION * strength(skill, day) + decay });
				return right;
			}
		};
		return learner;
	}
};
