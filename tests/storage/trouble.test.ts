import { expect, onTestFinished, test, vi } from 'vitest';
import {
	answered,
	LearnerRemoved,
	type Trouble,
	troubleOf,
	troubleSentences
} from '../../src/lib/storage/trouble.ts';

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

test('a store that stands still is told once, and what it does later still counts', async () => {
	vi.useFakeTimers();
	onTestFinished(() => void vi.useRealTimers());
	const told: Trouble[] = [];
	const slow = answered(new Promise((done) => setTimeout(done, 20_000, 'done')), (trouble) =>
		told.push(trouble)
	);
	const quick = answered(Promise.resolve('at once'), (trouble) => told.push(trouble));
	const failing = answered(Promise.reject(new Error('full')), (trouble) => told.push(trouble));
	await expect(failing).rejects.toThrow('full');
	await vi.advanceTimersByTimeAsync(7900);
	expect(told).toEqual([]);
	await vi.advanceTimersByTimeAsync(12_100);
	expect(told).toEqual(['silent']);
	expect(await slow).toBe('done');
	expect(await quick).toBe('at once');
});
