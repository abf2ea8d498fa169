import { expect, test } from 'vitest';
import { agreementOn } from './entries.ts';

test('100,000 numbers are marked by items as by Bucktail', { timeout: 600_000 }, async () => {
	const seeds = Array.from({ length: 12 }, (_, i) => i * 7919);
	const { entries, otherwise } = await agreementOn(seeds, 100);
	expect(otherwise).toEqual([]);
	expect(entries).toBeGreaterThan(100_000);
});
