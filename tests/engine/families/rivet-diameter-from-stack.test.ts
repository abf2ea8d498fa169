import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetDiameterFromStackTasks = await familyOf('rivet-diameter-from-stack');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetDiameterFromStackTasks, level);
	const stacks = tasks.map(({ drawn }) => drawn.given.layers as readonly number[]);

	test('sheets and rivet are stocked, and every layer has a name', () => {
		tasks.forEach(({ drawn, right }, i) => {
			for (const layer of stacks[i] ?? []) expect(sheetThicknesses).toContain(layer);
			expect(drawn.labels?.layers).toHaveLength(stacks[i]?.length ?? 0);
			expect(rivetDashes).toContain(Number(right.diameter) * 32);
		});
	});

	test('layers are never all alike, and the thickest one changes place', () => {
		for (const layers of stacks) expect(new Set(layers).size).toBeGreaterThan(1);
		const places = new Set(stacks.map((layers) => layers.indexOf(Math.max(...layers))));
		expect(places.size).toBe(level === 1 ? 2 : 3);
	});

	test('no part is more than twice as thick as another, and a shim is the thinnest', () => {
		for (const { number, drawn } of tasks) {
			const layers = (drawn.given.layers as readonly number[]).map((T, i) => ({
				name: String(drawn.labels?.layers?.[i]),
				T
			}));
			const shims = layers.filter(({ name }) => name === 'Shim').map(({ T }) => T);
			const parts = layers.filter(({ name }) => name !== 'Shim').map(({ T }) => T);
			expect(Math.max(...parts), number).toBeLessThanOrEqual(2 * Math.min(...parts));
			expect(Math.max(0, ...shims), number).toBeLessThanOrEqual(Math.min(...parts));
		}
	});

	test('whoever is asked for a thickness is asked how thick', () => {
		for (const { drawn } of tasks) {
			expect(drawn.question.startsWith('How thick')).toBe(drawn.asked.includes('thickest'));
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'diameter', task.right.diameter ?? 0))).toBe(true);
	});
});
