import { afterEach, expect, test, vi } from 'vitest';
import { newId } from '../../src/lib/storage/new-id.ts';

afterEach(() => vi.unstubAllGlobals());

/** Chance that gives the same byte every time, on a page without `randomUUID`. */
function stubChance(byte: number) {
	vi.stubGlobal('crypto', { getRandomValues: (bytes: Uint8Array) => bytes.fill(byte) });
}

test('the bits of version and variant are set, and all others are chance', () => {
	stubChance(0);
	expect(newId()).toBe('00000000-0000-4000-8000-000000000000');
	stubChance(0xff);
	expect(newId()).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
});

test('ids have the form of a UUID of version 4, and none comes twice', () => {
	const ids = Array.from({ length: 2000 }, newId);
	for (const id of ids) {
		expect(id).toMatch(/^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/);
	}
	expect(new Set(ids).size).toBe(ids.length);
});
