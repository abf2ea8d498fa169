import { afterEach, expect, test, vi } from 'vitest';
import { device } from '../../../src/lib/app/device/device.svelte.ts';
import { keepOwn, readOwn } from '../../../src/lib/app/device/own-kept.ts';
import { keepIn } from '../at-work.ts';

afterEach(() => {
	vi.unstubAllGlobals();
	vi.restoreAllMocks();
});

test('what was begun before there was a learner is the first learner’s, and nobody else’s', () => {
	keepIn(new Map());
	let learner: string | null = null;
	vi.spyOn(device, 'learnerId', 'get').mockImplementation(() => learner);
	keepOwn('check', 'twelve readings');
	expect(readOwn('check')).toBe('twelve readings');
	learner = 'one';
	expect(readOwn('check')).toBe('twelve readings');
	learner = 'two';
	expect(readOwn('check')).toBe(null);
	keepOwn('check', 'another part');
	learner = 'one';
	expect(readOwn('check')).toBe('twelve readings');
	keepOwn('check', null);
	expect(readOwn('check')).toBe(null);
});
