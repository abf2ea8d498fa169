import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { grownBy } from '../../../src/lib/engine/figures/size.ts';
import { type Way, waysOf } from '../../../src/lib/engine/lessons/lesson.ts';
import { drawingOf } from '../../../src/lib/engine/lessons/lettered.ts';
import { letteringFaults } from '../families/lettering-faults.ts';

const [way] = waysOf((await loadFamilies()).find(({ id }) => id === 'setback')!) as [Way];
const { given: like } = way.start;

/** Corners of the shaded triangle: centre, tangent point, mold point. */
function triangle(given: Way['start']['given']) {
	const { shapes } = drawingOf(way, given, like);
	const shaded = shapes.flatMap((one) => (one.kind === 'path' && one.fill === 'wash' ? [one] : []));
	expect(shaded).toHaveLength(1);
	const numbers = (shaded[0]?.d.match(/-?[\d.]+/g) ?? []).map(Number);
	return [0, 2, 4].map((i) => [numbers[i] ?? 0, numbers[i + 1] ?? 0] as const);
}

const apart = ([x, y]: readonly [number, number], [u, v]: readonly [number, number]) =>
	Math.hypot(x - u, y - v);

describe('the drawing of the lesson on setback', () => {
	test.each([
		// K of 90° is 1, of 60° 0.57735, of 120° 1.73205: FAA-H-8083-31B, Fig. 4-122
		[90, 1],
		[60, 0.57735],
		[120, 1.73205]
	])('a bend of %i°: the setback is %d of R + T', (angle, K) => {
		const [centre, tangent, mold] = triangle({ ...like, angle });
		expect(apart(tangent!, mold!) / apart(centre!, tangent!)).toBeCloseTo(K, 2);
	});

	test('R + T is longer by as much as R is', () => {
		const down = (R: number) => {
			const [centre, tangent] = triangle({ R, T: 0.05, angle: 90 });
			return apart(centre!, tangent!);
		};
		expect(down(0.15) / down(0.05)).toBeCloseTo(2, 2);
	});

	test('letters symbols, the setback in colour, and no word on a line', () => {
		const { shapes, title } = drawingOf(way, like, like);
		const texts = shapes.flatMap((one) => (one.kind === 'text' ? [one] : []));
		expect(texts.map(({ text }) => text).sort()).toEqual(['N', 'N/2', 'R', 'R + T', 'SB', 'T']);
		expect(texts.filter(({ tone }) => tone === 'marked').map(({ text }) => text)).toEqual(['SB']);
		expect(title).toContain('R + T');
		for (const growth of [0.6, 1, 2.4]) {
			const faults = way.draws.flatMap(({ given }) =>
				grownBy({ across: growth, down: growth }, () =>
					letteringFaults(drawingOf(way, given, like))
				)
			);
			expect(faults, `grown by ${growth}`).toEqual([]);
		}
	});
});
