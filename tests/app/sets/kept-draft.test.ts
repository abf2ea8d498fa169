import { afterEach, expect, test, vi } from 'vitest';
import { device } from '../../../src/lib/app/device/device.svelte.ts';
import { keepDraft, readDraft } from '../../../src/lib/app/sets/kept-draft.ts';
import { plainTerms } from '../../../src/lib/engine/sets/compose.ts';
import { keepIn } from '../at-work.ts';

afterEach(() => {
	vi.unstubAllGlobals();
	vi.restoreAllMocks();
});

test('what was composed before there was a learner is the first learner’s, and nobody else’s', () => {
	keepIn(new Map());
	let learner: string | null = null;
	vi.spyOn(device, 'learnerId', 'get').mockImplementation(() => learner);
	keepDraft(plainTerms('Week 6'), []);
	learner = 'one';
	expect(readDraft().title).toBe('Week 6');
	keepDraft(plainTerms('Week 6, mended'), []);
	expect(readDraft().title).toBe('Week 6, mended');
	learner = 'two';
	expect(readDraft().title).toBe('');
});
