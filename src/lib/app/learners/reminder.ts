import { backupDue, persistence } from '$lib/storage/persist.ts';
import { device } from '../device/device.svelte.ts';

const dayLength = 86_400_000;

/**
 * A sentence when the work of the learner at work could be lost with this device and a backup is
 * due, else null.
 *
 * @param now milliseconds since 1970-01-01 UTC
 */
export async function backupReminder(now: number): Promise<string | null> {
	const desk = await device.open();
	// Read anew: every answer counts.
	const learner = (await desk?.learners())?.find(({ id }) => id === device.learner?.id);
	if (!learner) return null;
	const days = Math.floor((now - (learner.backedUp ?? learner.created)) / dayLength);
	return backupDue(await persistence(), learner.unsaved, days) ? remind(days) : null;
}

function remind(days: number): string {
	return days < 2
		? 'Your latest work is only on this device.'
		: `Your work of the last ${days} days is only on this device.`;
}
