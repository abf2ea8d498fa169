import { expect, test } from 'vitest';
import { LearnerRemoved, troubleOf, troubleSentences } from '../../src/lib/storage/trouble.ts';

test.each([
	[new DOMException('', 'QuotaExceededError'), 'full'],
	[new DOMException('', 'VersionError'), 'outdated'],
	[new DOMException('', 'InvalidStateError'), 'closed'],
	[new DOMException('', 'SecurityError'), 'unavailable'],
	[new DOMException('', 'AbortError'), 'failed'],
	[new DOMException('', 'toString'), 'failed'],
	[new ReferenceError('indexedDB is not defined'), 'unavailable'],
	[new LearnerRemoved(), 'removed'],
	[new Error('anything'), 'failed'],
	['anything', 'failed']
])('%s is %s', (error, trouble) => {
	expect(troubleOf(error)).toBe(trouble);
});

test.each(Object.entries(troubleSentences))('%s is told in one sentence', (_trouble, sentence) => {
	expect(sentence).toMatch(/^[A-Z][^.]+\.$/);
});
