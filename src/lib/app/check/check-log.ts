import type { Checkup } from '$lib/engine/check/check.ts';
import type { Owned } from '$lib/engine/check/own.ts';
import { evidenceOfCheck } from '$lib/engine/schedule/check-evidence.ts';
import type { LabCheck } from '$lib/engine/schedule/event.ts';
import { events } from '$lib/storage/log.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
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

/** What has only begun is not decided, though all of it holds so far. */
function verdictOf({ soFar, verdict }: Checkup): LabCheck['verdict'] {
	return soFar !== null && verdict === 'holds' ? 'undecided' : verdict;
}

/** Writes a check to the log; resolves to whether it is safely on this device. */
export function saveCheck(entry: CheckEntry, checkup: Checkup, owned: Owned): Promise<boolean> {
	const { method, part, tool, units, values, own } = entry;
	return logbook.note({
		type: 'lab-check',
		method,
		part,
		tool: tool === '' ? null : tool,
		units,
		values: { ...values },
		own: { ...own },
		verdict: verdictOf(checkup),
		skills: evidenceOfCheck(checkup, owned).map((one) => ({ ...one }))
	});
}
