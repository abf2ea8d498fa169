import { work } from './set-work.ts';
import type { Job } from './work-desk.ts';

type AnyProgress = (done: number, of: number, part?: unknown) => void;
type AnyWork = (progress: AnyProgress, ...args: readonly unknown[]) => Promise<unknown>;

/** Runs a job by its name. What it is handed was put together by `WorkDesk.run`, which types it. */
export function runJob(
	job: Job,
	args: readonly unknown[],
	progress: AnyProgress
): Promise<unknown> {
	return (work[job] as AnyWork)(progress, ...args);
}
