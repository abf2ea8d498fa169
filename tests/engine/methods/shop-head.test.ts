import { expect, test } from 'vitest';
import { shopHead } from '../../../src/lib/engine/methods/shop-head.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const rows = [
	{
		from: 'published, 1940s service handbook, section I par. 14: 1/8 gives 0.188 by 0.063',
		width: 0.188,
		height: 0.063
	},
	{
		from: 'rule application, FAA-H-8083-31B p. 4-32, Fig. 4-76: 1/8 gives 0.1875 by 0.0625',
		width: 0.1875,
		height: 0.0625
	}
];

test.each(rows)('$from', ({ width, height }) => {
	const values = evaluate(shopHead, { D: 1 / 8 });
	expect(Math.abs(Number(values.width) - width)).toBeLessThanOrEqual(0.0005 + 1e-12);
	expect(Math.abs(Number(values.height) - height)).toBeLessThanOrEqual(0.0005 + 1e-12);
});

test.each([3, 4, 5, 6, 8, 10, 12])('a −%i rivet, counted in 64ths', (dash) => {
	const values = evaluate(shopHead, { D: dash / 32 });
	expect(values).toMatchObject({ width: (3 * dash) / 64, height: dash / 64 });
});
