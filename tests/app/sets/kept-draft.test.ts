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
	keepDraft(plainTerms('Week 6'), [], null);
	learner = 'one';
	expect(readDraft().title).toBe('Week 6');
	keepDraft(plainTerms('Week 6, mended'), [], null);
	expect(readDraft().title).toBe('Week 6, mended');
	learner = 'two';
	expect(readDraft().title).toBe('');
});

test('what was ticked for the last deal is ticked again, and nothing that is no topic', () => {
	keepIn(new Map());
	const dealt = { topics: ['rivets', 'bends'], levels: [1, 3] } as const;
	keepDraft(plainTerms('Week 6'), [], dealt);
	expect(readDraft().dealt).toEqual({
		topics: expect.arrayContaining(['rivets', 'bends']),
		levels: [1, 3]
	});
	keepDraft(plainTerms('Week 6'), [], { topics: ['gone' as 'rivets'], levels: [1] });
	expect(readDraft().dealt).toBeNull();
	keepDraft(plainTerms('Week 6'), [], null);
	expect(readDraft().dealt).toBeNull();
});
