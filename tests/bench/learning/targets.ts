import type { Outcome } from './simulate.ts';
import { type Estimate, difference, signed } from './statistics.ts';

/** What the shipped plan should reach in every world, in points, at equal effort. */
export interface Target {
	readonly label: string;
	readonly least: number;
	readonly measure: (ours: Outcome, roundRobin: Outcome, cramming: Outcome) => Estimate;
}

export const targets: readonly Target[] = [
	{
		label: 'at T over round-robin',
		least: 4,
		measure: (ours, roundRobin) => difference(ours.atExam, roundRobin.atExam)
	},
	{
		label: 'at T+28 over round-robin',
		least: -2,
		measure: (ours, roundRobin) => difference(ours.later, roundRobin.later)
	},
	{
		label: 'at T+28 over cramming',
		least: 10,
		measure: (ours, _, cramming) => difference(ours.later, cramming.later)
	}
];

export function verdict(target: Target, found: Estimate): string {
	return `${signed(found)} ${found.mean >= target.least ? 'pass' : '**fail**'}`;
}
