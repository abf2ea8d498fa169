import { type ChildProcess, fork } from 'node:child_process';
import type { Policy } from '../../../src/lib/engine/schedule/policy.ts';
import type { Outcome } from './simulate.ts';

/** A cell by names, as it is sent to another process. */
export interface Job {
	readonly world: string;
	/** A policy of the table, or numbers to try in ours. */
	readonly rival: string | Policy;
	readonly problems: number;
	readonly exam: number;
	readonly missed: number;
	readonly firstSeed: number;
	readonly learners: number;
}

/** Runs the jobs in so many processes. Outcomes come in the order of the jobs, whoever did them. */
export async function runJobs(jobs: readonly Job[], processes: number): Promise<Outcome[]> {
	const outcomes: Outcome[] = Array.from({ length: jobs.length });
	let next = 0;
	const serve = (worker: ChildProcess): Promise<void> =>
		new Promise((resolve, reject) => {
			let doing = -1;
			const hand = () => {
				doing = next++;
				const job = jobs[doing];
				if (job) worker.send(job);
				else worker.disconnect();
			};
			worker.on('message', (outcome: Outcome) => {
				outcomes[doing] = outcome;
				hand();
			});
			worker.on('error', reject);
			worker.on('exit', (code) => {
				if (code === 0) resolve();
				else reject(new Error(`bench worker ended with ${code}`));
			});
			hand();
		});
	const workers = Array.from({ length: processes }, () =>
		fork(new URL('./worker.ts', import.meta.url))
	);
	await Promise.all(workers.map(serve));
	return outcomes;
}
