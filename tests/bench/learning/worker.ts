import type { Job } from './jobs.ts';
import { rivals } from './rivals.ts';
import { planned } from './rivals/planned.ts';
import { simulateCell } from './simulate.ts';
import { worlds } from './worlds.ts';

process.on('message', (job: Job) => {
	const world = worlds.find((w) => w.id === job.world);
	const rival =
		typeof job.rival === 'string'
			? rivals.find((r) => r.id === job.rival)
			: planned('candidate', 'candidate', job.rival);
	if (!world || !rival) throw new Error(`unknown cell: ${job.world}, ${String(job.rival)}`);
	process.send?.(simulateCell({ ...job, world, rival }));
});
