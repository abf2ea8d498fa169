import { FSRSAlgorithm, type FSRSState, default_w } from 'ts-fsrs';
import type { Chance } from '../chance.ts';
import type { Ground } from '../ground.ts';
import { FIRST_TRY, type Learner, type World } from '../learner.ts';

interface Trace {
	readonly state: FSRSState;
	readonly day: number;
}

/**
 * FSRS-6 memory, but of another person: each of the 21 parameters is off by a lognormal factor
 * (sigma 0.2), and time runs at a rate of its own for the learner (0.5) and for each skill (0.4).
 */
export const fsrsLike: World = {
	id: 'fsrs-like',
	label: 'FSRS-like, spread',
	learner(chance: Chance, ground: Ground): Learner {
		const w = default_w.map((x) => x * Math.exp(0.2 * chance.normal()));
		const fsrs = new FSRSAlgorithm({ w });
		const own = Math.exp(0.5 * chance.normal());
		const scale = Array.from(
			{ length: ground.skills },
			() => own * Math.exp(0.4 * chance.normal())
		);
		const traces = new Map<number, Trace>();
		const elapsed = (skill: number, trace: Trace, day: number) =>
			(day - trace.day) / (scale[skill] ?? 1);
		const learner: Learner = {
			chance(skill, day) {
				const trace = traces.get(skill);
				if (!trace) return FIRST_TRY;
				return fsrs.forgetting_curve(elapsed(skill, trace, day), trace.state.stability);
			},
			answer(skill, day) {
				const right = chance.uniform() < learner.chance(skill, day);
				const trace = traces.get(skill);
				const gap = trace ? elapsed(skill, trace, day) : 0;
				const state = fsrs.next_state(trace?.state ?? null, gap, right ? 3 : 1);
				traces.set(skill, { state, day });
				return right;
			}
		};
		return learner;
	}
};
