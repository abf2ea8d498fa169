import type { Desk } from './desk.ts';
import { type Device, device, learnerKey } from './device.svelte.ts';
import { keep } from './kept.ts';

/**
 * Reads the learners, and the log of the one at work or of the one last at work. What was
 * settled before there was a learner is the first one's, and about to be written.
 */
export async function readDesk(
	here: Device,
	desk: Desk,
	wanted: string | null,
	isFirst = false
): Promise<void> {
	here.learners = await desk.learners();
	here.learner = here.learners.find(({ id }) => id === wanted) ?? here.learners[0] ?? null;
	keep(learnerKey, here.learner?.id ?? null);
	const { learner } = here;
	here.learning = await desk.learning(learner?.id);
	const course = learner ? await desk.course(learner.id) : null;
	here.course = course ?? (isFirst ? here.course : null);
}

/** Reads everything again, after a restore or a change of learners. */
export async function refresh(wanted: string | null = device.learner?.id ?? null): Promise<void> {
	const desk = await device.open();
	if (desk) await readDesk(device, desk, wanted);
}

/** Another learner sits down at this device. */
export async function switchTo(id: string): Promise<void> {
	const desk = await device.open();
	if (!desk) return;
	await desk.use(id);
	await readDesk(device, desk, id);
}
