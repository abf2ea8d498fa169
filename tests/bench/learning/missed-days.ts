import type { Job } from './jobs.ts';
import { BUDGETS, EXAM, type Lookup } from './main-table.ts';
import { table } from './markdown.ts';
import type { Outcome } from './simulate.ts';
import { difference, signed } from './statistics.ts';
import { worlds } from './worlds.ts';

const SHARES = [0.2, 0.5];
const COMPARED = [
	{ rival: 'ours', label: 'ours' },
	{ rival: 'round-robin', label: 'round-robin' }
];

const cells = BUDGETS.flatMap((problems) =>
	SHARES.flatMap((missed) => COMPARED.map((compared) => ({ problems, missed, ...compared })))
);

export const missedJobs: readonly Job[] = cells.flatMap(({ problems, missed, rival }) =>
	worlds.map((world) => {
		return { world: world.id, rival, problems, missed, exam: EXAM, firstSeed: 0, learners: 1000 };
	})
);

/** Change at T against the same policy with no day missed and as many problems. */
export function missedTable(outcomes: readonly Outcome[], unmissed: Lookup): string {
	const head = ['policy, days missed, problems', ...worlds.map((world) => world.label)];
	const rows = cells.map(({ label, rival, missed, problems }, row) => [
		`${label}, ${100 * missed} %, ${problems}`,
		...worlds.map((world, column) => {
			const here = outcomes[row * worlds.length + column]?.atExam ?? [];
			return signed(difference(here, unmissed(world.id, rival, problems).atExam));
		})
	]);
	return table(head, rows);
}
