import type { Job } from './jobs.ts';
import { table } from './markdown.ts';
import { rivals } from './rivals.ts';
import type { Outcome } from './simulate.ts';
import { type Estimate, estimate, plain, points } from './statistics.ts';
import { type Target, targets, verdict } from './targets.ts';
import { worlds } from './worlds.ts';

export const EXAM = 42;
export const BUDGETS = [192, 96];

const cell = { exam: EXAM, missed: 0, firstSeed: 0, learners: 1000 };

export const mainJobs: readonly Job[] = BUDGETS.flatMap((problems) =>
	rivals.flatMap((rival) =>
		worlds.map((world) => ({ ...cell, problems, rival: rival.id, world: world.id }))
	)
);

/** Finds the outcome of a job by its names. */
export type Lookup = (world: string, rival: string, problems: number) => Outcome;

export function lookupIn(jobs: readonly Job[], outcomes: readonly Outcome[]): Lookup {
	return (world, rival, problems) => {
		const found =
			outcomes[
				jobs.findIndex((j) => j.world === world && j.rival === rival && j.problems === problems)
			];
		if (!found) throw new Error(`no outcome: ${world}, ${rival}, ${problems}`);
		return found;
	};
}

export function mainTable(outcomeOf: Lookup, problems: number): string {
	const head = ['policy', ...worlds.map((world) => world.label)];
	const rows = rivals.map((rival) => [
		rival.label,
		...worlds.map((world) => {
			const { atExam, later } = outcomeOf(world.id, rival.id, problems);
			return `${plain(estimate(atExam))} / ${plain(estimate(later))}`;
		})
	]);
	return table(head, rows);
}

/** How far ours is from a target in a world. */
function reach(outcomeOf: Lookup, target: Target, world: string, problems: number): Estimate {
	return target.measure(
		outcomeOf(world, 'ours', problems),
		outcomeOf(world, 'round-robin', problems),
		outcomeOf(world, 'cramming', problems)
	);
}

export function targetTable(outcomeOf: Lookup, problems: number): string {
	const head = ['ours', 'target', ...worlds.map((world) => world.label)];
	const rows = targets.map((target) => [
		target.label,
		points(target.least),
		...worlds.map(({ id }) => verdict(target, reach(outcomeOf, target, id, problems)))
	]);
	return table(head, rows);
}

/** Every target missed, in words. */
export function failures(outcomeOf: Lookup): string {
	const lines = BUDGETS.flatMap((problems) =>
		worlds.flatMap((world) =>
			targets.flatMap((target) => {
				const { mean } = reach(outcomeOf, target, world.id, problems);
				const text = `- ${problems} problems, ${world.label}: ${points(mean)} ${target.label}`;
				return mean < target.least ? [`${text}, wanted ${points(target.least)}`] : [];
			})
		)
	);
	const all = BUDGETS.length * worlds.length * targets.length;
	return [`${lines.length} of ${all} targets are missed:`, '', ...lines].join('\n');
}
