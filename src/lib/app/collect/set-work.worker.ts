/// <reference lib="webworker" />
import { SetError } from '$lib/engine/sets/set-error.ts';
import { runJob } from './run-job.ts';
import type { Answered, Asked } from './work-desk.ts';

declare const self: DedicatedWorkerGlobalScope;

const say = (answer: Answered) => self.postMessage(answer);

self.addEventListener('message', ({ data: { id, job, args } }: MessageEvent<Asked>) => {
	runJob(job, args, (done, of, part) => say({ id, done, of, part })).then(
		(result) => say({ id, result }),
		(error: unknown) => {
			if (error instanceof SetError) say({ id, sentence: error.message });
			else say({ id, fault: error instanceof Error ? error.message : String(error) });
		}
	);
});
