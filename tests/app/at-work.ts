import { afterEach, beforeEach, vi } from 'vitest';
import { device } from '../../src/lib/app/device/device.svelte.ts';
import { emptyLearning } from '../../src/lib/engine/schedule/learning.ts';
import type { Learner } from '../../src/lib/storage/database.ts';

/**
 * Before each test of the file: Sam is at work on a device whose store does not open, with nothing in
 * the log. Returns what pages keep in the browser, by key.
 */
export function samAtWork(): Map<string, string> {
	const kept = new Map<string, string>();
	beforeEach(() => {
		kept.clear();
		keepIn(kept);
		atWork('sam');
		device.learning = emptyLearning();
		vi.spyOn(device, 'open').mockResolvedValue(null);
	});
	// Other files are handed the same device.
	afterEach(() => {
		vi.restoreAllMocks();
		atWork(null);
		device.learning = null;
	});
	return kept;
}

/** Somebody else, or nobody, is at work. */
export function atWork(id: string | null): void {
	device.learner = id === null ? null : { ...newcomer, id, nickname: id };
}

const newcomer: Omit<Learner, 'id' | 'nickname'> = {
	named: { at: 0, id: '' },
	created: 0,
	used: 0,
	unsaved: 0,
	backedUp: null
};

/** Until the end of the test, pages keep in here what they keep in the browser. */
export function keepIn(kept: Map<string, string>): void {
	vi.stubGlobal('localStorage', {
		getItem: (key: string) => kept.get(key) ?? null,
		setItem: (key: string, text: string) => void kept.set(key, text),
		removeItem: (key: string) => void kept.delete(key)
	});
}
