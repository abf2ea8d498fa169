import { newId } from '$lib/storage/new-id.ts';
import { below } from '../device/chance.ts';
import type { Practice } from '../practice/practice.svelte.ts';
import { plan } from './plan.svelte.ts';

/** Starts the plan's run for today; resolves to whether there is anything to do. */
export async function startPlan(practice: Practice): Promise<boolean> {
	const run = await plan.newRun(newId(), below, practice.run);
	if (!run) return false;
	practice.keep(run);
	await practice.go(run.at);
	return true;
}
