import { afterEach, describe, expect, test, vi } from 'vitest';
import {
	askToPersist,
	backupDue,
	persistence,
	persistenceSentences,
	roomLeft
} from '../../src/lib/storage/persist.ts';

afterEach(() => {
	vi.unstubAllGlobals();
});

function stubStorage(answer: () => Promise<unknown>): void {
	vi.stubGlobal('navigator', { storage: { persist: answer, persisted: answer, estimate: answer } });
}

describe('the answer of the browser', () => {
	test.each([
		['granted', true],
		['refused', false]
	] as const)('%s', async (wanted, answer) => {
		stubStorage(() => Promise.resolve(answer));
		expect(await askToPersist()).toBe(wanted);
		expect(await persistence()).toBe(wanted);
	});

	test('that fails', async () => {
		stubStorage(() => Promise.reject(new TypeError('no')));
		expect(await askToPersist()).toBe('unknown');
		expect(await persistence()).toBe('unknown');
		expect(await roomLeft()).toBeNull();
	});

	test.each(Object.entries(persistenceSentences))('%s is told in one sentence', (_answer, said) => {
		expect(said).toMatch(/^[A-Z][^.]+\.$/);
	});

	test('a browser without any of it', async () => {
		vi.stubGlobal('navigator', {});
		expect(await askToPersist()).toBe('unknown');
		expect(await persistence()).toBe('unknown');
		expect(await roomLeft()).toBeNull();
	});

	test('the room left', async () => {
		stubStorage(async () => ({ usage: 5, quota: 100 }));
		expect(await roomLeft()).toEqual({ used: 5, allowed: 100 });
		stubStorage(async () => ({}));
		expect(await roomLeft()).toBeNull();
	});
});

test.each([
	['refused', 0, 99, false],
	['refused', 1, 4.9, false],
	['refused', 1, 5, true],
	['refused', 49, 0, false],
	['refused', 50, 0, true],
	['unknown', 1, 5, true],
	['unknown', 50, 0, true],
	['granted', 0, 99, false],
	['granted', 499, 29, false],
	['granted', 1, 30, true],
	['granted', 500, 0, true]
] as const)('%s, %i events in %d days: reminder %s', (kept, count, days, due) => {
	expect(backupDue(kept, count, days)).toBe(due);
});
