import type { Checkup } from '$lib/engine/check/check.ts';
import type { Owned } from '$lib/engine/check/own.ts';
import { evidenceOfCheck } from '$lib/engine/schedule/check-evidence.ts';
import type { LabCheck } from '$lib/engine/schedule/event.ts';
import { append, events } from '$lib/storage/log.ts';
import { stamped } from '$lib/storage/stamp.ts';
import { device } from '../device/device.svelte.ts';
import { unexpected } from '../unexpected.svelte.ts';
import type { CheckEntry } from './check-entry.ts';

/** Most checks that are listed. */
const mostListed = 30;

/** The newest checks of the learner at work, newest first. */
export async function checksBefore(): Promise<LabCheck[]> {
	const desk = await device.open();
	const id = device.learner?.id;
	if (!desk || id === undefined) return [];
	const found: LabCheck[] = [];
	for await (const event of events(desk.store, id, { newestFirst: true })) {
		if (event.type === 'lab-check') found.push(event);
		if (found.length >= mostListed) break;
	}
	return found;
}

/** Writes a check to the log; resolves to whether it is safely on this device. */
export async function saveCheck(
	entry: CheckEntry,
	checkup: Checkup,
	owned: Owned
): Promise<boolean> {
	const desk = await device.open();
	if (!desk) return false;
	try {
		const learner = device.learner?.id ?? (await desk.firstLearner());
		const { method, part, tool, units, values, own } = entry;
		const skills = evidenceOfCheck(checkup, owned).map((one) => ({ ...one }));
		const facts = { method, part, units, values, own, skills, verdict: checkup.verdict };
		await append(
			desk.store,
			stamped(learner, { type: 'lab-check', ...facts, tool: tool === '' ? null : tool })
		);
		await device.refresh(learner);
		return true;
	} catch (error) {
		device.trouble = unexpected.sentence(error);
		return false;
	}
}
