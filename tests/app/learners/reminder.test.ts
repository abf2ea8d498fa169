import { afterEach, describe, expect, test, vi } from 'vitest';
import { device } from '../../../src/lib/app/device/device.svelte.ts';
import { backupReminder } from '../../../src/lib/app/learners/reminder.ts';
import type { Learner } from '../../../src/lib/storage/database.ts';

const day = 86_400_000;
const now = 100 * day;
const sam: Learner = {
	id: '5a000000-0000-4000-8000-000000000001',
	nickname: 'Sam',
	named: { at: 0, id: '' },
	created: now - 4 * day,
	used: 0,
	unsaved: 1,
	backedUp: null
};

/** What is said when this is what is stored of Sam, whom a page read before as he was then. */
async function reminderFor(stored: Partial<Learner>, kept = false): Promise<string | null> {
	vi.stubGlobal('navigator', { storage: { persisted: async () => kept } });
	device.learner = sam;
	const desk = { learners: async () => [{ ...sam, ...stored }] };
	// Only this part of the desk is used.
	vi.spyOn(device, 'open').mockResolvedValue(desk as never);
	return backupReminder(now);
}

afterEach(() => {
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
	device.learner = null;
});

describe('the reminder of a backup', () => {
	test('stays away while little could be lost', async () => {
		expect(await reminderFor({})).toBeNull();
		expect(await reminderFor({ unsaved: 0, created: 0 })).toBeNull();
		expect(await reminderFor({ unsaved: 20, backedUp: now - 3 * day, created: 0 })).toBeNull();
	});

	test('comes after some days, counted from the last backup or from the start', async () => {
		const said = 'Your work of the last 6 days is only on this device.';
		expect(await reminderFor({ created: now - 6 * day })).toBe(said);
		expect(await reminderFor({ created: 0, backedUp: now - 6 * day })).toBe(said);
	});

	test('comes on the same day after much work', async () => {
		expect(await reminderFor({ unsaved: 60, backedUp: now })).toBe(
			'Your latest work is only on this device.'
		);
	});

	test('comes later where the browser keeps what is stored', async () => {
		expect(await reminderFor({ created: now - 6 * day }, true)).toBeNull();
		expect(await reminderFor({ created: now - 31 * day }, true)).toContain('31 days');
	});
});

test('there is none when nobody is at work or nothing can be stored', async () => {
	vi.spyOn(device, 'open').mockResolvedValue(null);
	expect(await backupReminder(now)).toBeNull();
});
