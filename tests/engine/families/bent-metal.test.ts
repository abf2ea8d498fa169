import { expect, test } from 'vitest';
import { boundsOf } from '../../../src/lib/engine/figures/to-svg.ts';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { familyOf } from './family-of.ts';

/*
 * Square bends with the first leg level: what the method says of the legs shows in the size of the
 * metal, which is the first shape of the drawing.
 */

/** How much wider and higher the metal is by an answer than by the right one, on paper. */
async function grown(id: string, key: string, by: number) {
	const task = drawTask(await familyOf(id), 1, 11);
	const effect = effectOf(task, key, Number(task.right[key]) + by);
	if (!effect) throw new Error(`nothing is shown: ${id} ${key}`);
	const [made, wanted] = [effect.entered, effect.right].map(({ drawing }) =>
		boundsOf(drawing.shapes.slice(0, 1))
	);
	if (!made || !wanted) throw new Error('no metal');
	return {
		wider: made.right - made.left - (wanted.right - wanted.left),
		higher: made.bottom - made.top - (wanted.bottom - wanted.top),
		says: effect.entered.says
	};
}

test.each([
	{ id: 'setback', key: 'setback', by: -0.1, wider: 1, higher: 1, says: 'each leg .* too long' },
	{ id: 'setback', key: 'setback', by: 0.1, wider: -1, higher: -1, says: 'each leg .* too short' },
	{ id: 'setback', key: 'K', by: -0.5, wider: 1, higher: 1, says: 'each leg .* too long' },
	{
		id: 'bend-allowance',
		key: 'allowance',
		by: 0.1,
		wider: 0,
		higher: 1,
		says: 'the last leg .* too long'
	},
	{
		id: 'bend-allowance',
		key: 'allowance',
		by: -0.1,
		wider: 0,
		higher: -1,
		says: 'the last leg .* too short'
	},
	{
		id: 'sight-line',
		key: 'sightLine',
		by: 0.1,
		wider: 1,
		higher: -1,
		says: 'under the nose comes out .* too long'
	},
	{
		id: 'sight-line',
		key: 'tangentLine',
		by: -0.1,
		wider: -1,
		higher: 1,
		says: 'under the nose comes out .* too short'
	},
	{
		id: 'developed-width',
		key: 'width',
		by: 0.1,
		wider: 0,
		higher: 1,
		says: 'the last leg .* too long'
	},
	{
		id: 'developed-width',
		key: 'width',
		by: -0.1,
		wider: 0,
		higher: -1,
		says: 'the last leg .* too short'
	}
])('$id: $key off by $by', async ({ id, key, by, wider, higher, says }) => {
	const shown = await grown(id, key, by);
	expect(Math.sign(Math.round(shown.wider))).toBe(wider);
	expect(Math.sign(Math.round(shown.higher))).toBe(higher);
	expect(shown.says).toMatch(new RegExp(says));
});

test('a sheet bent too far leans back over its first leg', async () => {
	const family = await familyOf('setback-from-legs');
	const task = Array.from({ length: 100 }, (_, seed) => drawTask(family, 1, seed)).find(
		({ right }) => Number(right.angle) > 120
	);
	if (!task) throw new Error('none of these sheets is bent over 120°');
	const wanted = Number(task.right.angle);
	const heightAt = (angle: number) => {
		const { top = NaN, bottom = NaN } = boundsOf(
			effectOf(task, 'angle', angle)?.entered.drawing.shapes.slice(0, 1) ?? []
		);
		return bottom - top;
	};
	expect(heightAt(90)).toBeGreaterThan(heightAt(wanted));
	// Flat or closed, it is drawn no farther than sheet can be bent.
	expect(heightAt(0)).toBe(heightAt(-50));
	expect(heightAt(180)).toBe(heightAt(300));
});
