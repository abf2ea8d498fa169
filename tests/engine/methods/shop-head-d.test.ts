import { expect, test } from 'vitest';
import { shopHeadD } from '../../../src/lib/engine/methods/shop-head-d.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

// FAA-H-8083-31B p. 4-32, Fig. 4-76, the group of D, E and M rivets: in 320ths of an inch.
test.each([
	[5, 70, 30],
	[6, 84, 36],
	[8, 112, 48]
])('a -%d rivet', (dash, width, height) => {
	const values = evaluate(shopHeadD, { D: dash / 32 });
	expect(Number(values.width) * 320).toBeCloseTo(width, 9);
	expect(Number(values.height) * 320).toBeCloseTo(height, 9);
});
