import { describe, expect, test } from 'vitest';
import { grownBy } from '../../../src/lib/engine/figures/size.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { rivetDashes, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetLengthTasks = await familyOf('rivet-length');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetLengthTasks, level);

	test('sheets and rivets are stocked, and the rivet is the size by 3T or the one within 2.5T', () => {
		for (const { drawn } of tasks) {
			const layers = drawn.given.layers as readonly number[];
			const D = Number(drawn.given.D);
			expect(layers).toHaveLength(level === 1 ? 2 : 3);
			for (const layer of layers) expect(sheetThicknesses).toContain(layer);
			expect(rivetDashes).toContain(D * 32);
			const thickest = Math.max(...layers);
			expect(D).toBeGreaterThanOrEqual(2.5 * thickest - 1e-9);
			// 3/16 in for 0.063 in: 7/32 in is not stocked.
			const smaller = rivetDashes.filter((dash) => dash / 32 < D);
			expect(Math.max(0, ...smaller) / 32).toBeLessThan(3 * thickest);
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		expect(tasks.every((task) => outcomeOf(task, 'length', task.right.length ?? 0))).toBe(true);
	});
});

test('in the smallest drawing the length for the shop head stands under the names of the layers', () => {
	const task = manyTasks(rivetLengthTasks, 3).find(
		({ drawn }) => Math.max(...(drawn.given.layers as readonly number[])) <= 0.032
	);
	if (!task) throw new Error('no thin stack was drawn');
	const { shapes } = grownBy({ across: 0.4, down: 0.4 }, () =>
		rivetLengthTasks.figure(task.drawn.given, (key) => key)
	);
	const lines = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
	const names = lines.filter(({ text }) => text === 'layers').map(({ y }) => y);
	const length = lines.find(({ text }) => text === 'for the shop head')?.y ?? 0;
	expect(names).toHaveLength(3);
	expect(length - Math.max(...names)).toBeGreaterThan(13);
});

test('what a length does: too short, thin head, full head, bent over', () => {
	const task = drawTask(rivetLengthTasks, 1, 3);
	const { right, drawn } = task;
	const says = (entered: number) => outcomeOf(task, 'length', entered)?.says ?? '';
	const [grip, D, needed] = [Number(right.grip), Number(drawn.given.D), Number(right.needed)];
	expect(says(grip - 0.01)).toContain('does not even come through');
	expect(says(grip + 0.4 * D)).toContain('too little for any head');
	expect(says(grip + 1.1 * D)).toContain('where 1.5D is wanted');
	expect(says(Number(right.length))).toContain('enough for a full shop head');
	expect(says(needed + 1 / 16)).toContain('bends over');
});

test.each(levels)(
	'at level %i, a length is not told by the diameter, nor found by the nearest 1/16',
	(level) => {
		const tasks = manyTasks(rivetLengthTasks, level);
		const dashesMore = tasks.map(
			({ drawn, right }) =>
				Math.round(Number(right.length) * 16) - Math.round(Number(drawn.given.D) * 32)
		);
		const nearest = tasks.filter(
			({ right }) => Math.round(Number(right.needed) * 16) === Number(right.length) * 16
		);
		// Two sheets that go with a size are seldom so thin that no dash is added.
		const [oneMore, found] = level === 1 ? [0.92, 0.2] : [0.6, 0];
		expect(dashesMore.filter((more) => more === 1).length).toBeLessThan(oneMore * tasks.length);
		expect(nearest.length).toBeLessThanOrEqual(found * tasks.length);
	}
);
