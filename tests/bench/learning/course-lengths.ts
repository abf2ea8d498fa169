import type { Job } from './jobs.ts';
import { table } from './markdown.ts';
import type { Outcome } from './simulate.ts';
import { difference, signed } from './statistics.ts';
import { worlds } from './worlds.ts';

const LENGTHS = [14, 28, 84];
const PROBLEMS = 192;
const PAIR = ['ours', 'round-robin'];

export const lengthJobs: readonly Job[] = LENGTHS.flatMap((exam) =>
	worlds.flatMap((world) =>
		PAIR.map((rival) => {
			const cell = { world: world.id, rival, exam, problems: PROBLEMS };
			return { ...cell, missed: 0, firstSeed: 0, learners: 300 };
		})
	)
);

/** Ours less round-robin, at T / at T+28, for exams nearer and farther than the one tuned for. */
export function lengthTable(outcomes: readonly Outcome[]): string {
	const head = ['days to the exam', ...worlds.map((world) => world.label)];
	const rows = LENGTHS.map((exam, row) => [
		String(exam),
		...worlds.map((_, column) => {
			const at = (row * worlds.length + column) * PAIR.length;
			const [ours, roundRobin] = [outcomes[at], outcomes[at + 1]];
			if (!ours || !roundRobin) throw new Error(`no outcome: ${exam} days`);
			const now = difference(ours.atExam, roundRobin.atExam);
			return `${signed(now)} / ${signed(difference(ours.later, roundRobin.later))}`;
		})
	]);
	return table(head, rows);
}
