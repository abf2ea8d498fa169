import { expect, test } from 'vitest';
import { checkCards } from '../../../src/lib/engine/check/catalogue.ts';
import { askedDrawing } from '../../../src/lib/engine/check/drawings/asked.ts';
import { boundsOf, toSvg } from '../../../src/lib/engine/figures/to-svg.ts';

const before = ['0.274', '0.251', '0.236'].map((entry, i) => ({
	name: String(i + 9),
	entry,
	verdict: (['holds', 'undecided', 'fails'] as const)[i] ?? null
}));

test.each(checkCards.map(({ id }) => id))('%s: the next one stands on the part', (method) => {
	for (const many of [0, 1, 3]) {
		const asked = { method, key: 'measured', each: 'hole', name: '12' };
		const drawing = askedDrawing({ ...asked, before: before.slice(0, many) });
		const words = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
		expect(words.some((word) => /^(R )?\?$/.test(word))).toBe(true);
		expect(words).toContain('12');
		// Two before it at most, the newest ones.
		expect(words.filter((word) => word.startsWith('0.'))).toEqual(
			before.slice(Math.max(0, many - 2), many).map(({ entry }) => entry)
		);
		// As wide as a phone shows it without smaller letters.
		const { left, right } = boundsOf(drawing.shapes);
		expect(right - left).toBeLessThanOrEqual(280);
		expect(toSvg(drawing)).toContain('12 is asked for');
	}
});

test('the height of a head is asked for upright', () => {
	const asked = { method: 'shop-head-check', each: 'head', name: '1', before: [] };
	const [wide, high] = ['width', 'height'].map((key) => toSvg(askedDrawing({ ...asked, key })));
	expect(wide).not.toBe(high);
});
