import { type Policy, SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import type { Job } from './jobs.ts';
import { BUDGETS, EXAM, lookupIn } from './main-table.ts';
import { table } from './markdown.ts';
import type { Outcome } from './simulate.ts';
import { targets } from './targets.ts';
import { worlds } from './worlds.ts';

/** Numbers tried in place of the shipped ones, each for a reason. */
const candidates: readonly { readonly label: string; readonly numbers: Partial<Policy> }[] = [
	{ label: 'shipped', numbers: {} },
	{ label: 'no sweep', numbers: { sweepShare: 0, sweepCap: 1 } },
	{ label: 'sweep of 15 %', numbers: { sweepShare: 0.15 } },
	{ label: 'sweep of 35 %', numbers: { sweepShare: 0.35, sweepCap: 3 } },
	{ label: 'sweep day no longer than others', numbers: { sweepCap: 1 } },
	{ label: 'sweep in 2 days', numbers: { sweepDays: 2, sweepCap: 3 } },
	{ label: 'sweep in 5 days', numbers: { sweepDays: 5 } },
	{ label: 'order by FSRS recall alone', numbers: { trust: 1, rest: 0.3 } },
	{ label: '... and new ones always first', numbers: { trust: 1, rest: 99 } },
	{ label: 'order half by FSRS', numbers: { trust: 0.5 } },
	{ label: 'order by age alone', numbers: { trust: 0 } },
	{ label: 'short rest before new ones', numbers: { rest: 1 } },
	{ label: 'long rest before new ones', numbers: { rest: 2.2 } },
	{ label: 'new ones always first', numbers: { rest: 99 } },
	{ label: 'misses again after 1 day', numbers: { missRest: 1 } },
	{ label: 'misses again after 3 days', numbers: { missRest: 3 } },
	{ label: 'misses in their turn', numbers: { missRest: 99 } },
	{ label: 'build on shaky needs', numbers: { inHand: 0 } },
	{ label: 'build on one right answer', numbers: { inHand: 0.5 } },
	{ label: 'build on two right answers', numbers: { inHand: 0.85 } },
	{ label: 'no return in the same run', numbers: { returns: 0, newReturns: 0 } },
	{ label: 'returns of new skills only', numbers: { returns: 0 } },
	{ label: 'returns up to one task in five', numbers: { returns: 0.2, newReturns: 0.2 } },
	{ label: 'every miss returns', numbers: { returns: 1, newReturns: 1 } }
];

const BASELINES = ['round-robin', 'cramming'];
// not the learners of the main table: the shipped numbers were chosen on these
const FIRST_SEED = 1_000_000;

export function candidateJobs(learners: number): Job[] {
	const cell = { exam: EXAM, missed: 0, firstSeed: FIRST_SEED, learners };
	const each = (rival: string | Policy) =>
		BUDGETS.flatMap((problems) =>
			worlds.map((world) => ({ ...cell, problems, rival, world: world.id }))
		);
	const policies = candidates.map(({ numbers }) => ({ ...SHIPPED, ...numbers }));
	return [...BASELINES, ...policies].flatMap(each);
}

/** For each candidate its worst cells against the targets, over all worlds and budgets. */
export function candidateTable(jobs: readonly Job[], outcomes: readonly Outcome[]): string {
	const baseline = lookupIn(jobs, outcomes);
	const cells = BUDGETS.length * worlds.length;
	const head = [
		'candidate',
		...targets.map((t) => `worst ${t.label}`),
		'targets missed',
		'points short'
	];
	const rows = candidates.map(({ label }, c) => {
		const from = (BASELINES.length + c) * cells;
		const found = targets.map((target) =>
			jobs.slice(from, from + cells).map(({ world, problems }, i) => {
				const ours = outcomes[from + i];
				if (!ours) throw new Error(`no outcome: ${label}`);
				const roundRobin = baseline(world, 'round-robin', problems);
				return target.measure(ours, roundRobin, baseline(world, 'cramming', problems)).mean;
			})
		);
		const short = found.flatMap((means, t) =>
			means.map((mean) => Math.max(0, (targets[t]?.least ?? 0) - mean))
		);
		return [
			label,
			...found.map((means) => Math.min(...means).toFixed(1)),
			`${short.filter((points) => points > 0).length} of ${short.length}`,
			short.reduce((sum, points) => sum + points, 0).toFixed(1)
		];
	});
	return table(head, rows);
}
