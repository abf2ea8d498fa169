import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { grownBy } from '../../../src/lib/engine/figures/size.ts';
import { type Way, waysOf } from '../../../src/lib/engine/lessons/lesson.ts';
import { drawingOf } from '../../../src/lib/engine/lessons/lettered.ts';
import { letteringFaults } from '../families/lettering-faults.ts';

const way = (await loadFamilies())
	.filter(({ id }) => id === 'setback')
	.flatMap((family) => waysOf(family))[0] as Way;
const { given: like } = way.start;

/** Legs of the shaded triangle: from the centre to the tangent point, and on to the mold point. */
function triangle(given: Way['start']['given']) {
	const { shapes } = drawingOf(way, given, like);
	const shaded = shapes.flatMap((one) => (one.kind === 'path' && one.fill === 'wash' ? [one] : []));
	expect(shaded).toHaveLength(1);
	const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = (shaded[0]?.d.match(/-?[\d.]+/g) ?? []).map(
		Number
	);
	return { down: Math.hypot(c - a, d - b), across: Math.hypot(e - c, f - d) };
}

describe('the drawing of the lesson on setback', () => {
	test.each([
		// K of 90° is 1, of 60° 0.57735, of 120° 1.73205: FAA-H-8083-31B, Fig. 4-122
		[90, 1],
		[60, 0.57735],
		[120, 1.73205]
	])('a bend of %i°: the setback is %d of R + T', (angle, K) => {
		const { down, across } = triangle({ ...like, angle });
		expect(across / down).toBeCloseTo(K, 2);
	});

	test('R + T is longer by as much as R is', () => {
		const down = (R: number) => triangle({ R, T: 0.05, angle: 90 }).down;
		expect(down(0.15) / down(0.05)).toBeCloseTo(2, 2);
	});

	test('letters symbols, the setback in colour, and no word on a line', () => {
		const { shapes, title } = drawingOf(way, like, like);
		const texts = shapes.flatMap((one) => (one.kind === 'text' ? [one] : []));
		expect(texts.map(({ text }) => text).sort()).toEqual(['N', 'N/2', 'R', 'R + T', 'SB', 'T']);
		expect(texts.filter(({ tone }) => tone === 'marked').map(({ text }) => text)).toEqual(['SB']);
		expect(title).toContain('R + T');
		for (const growth of [0.6, 2.4]) {
			const faults = way.draws
				.filter((_, i) => i % 4 === 0)
				.flatMap(({ given }) =>
					grownBy({ across: growth, down: growth }, () =>
						letteringFaults(drawingOf(way, given, like))
					)
				);
			expect(faults, `grown by ${growth}`).toEqual([]);
		}
	});
});
