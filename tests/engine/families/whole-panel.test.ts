import { expect, test } from 'vitest';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { circlesIn } from './circles.ts';
import { drawingFaults } from './drawing-faults.ts';
import { familyOf } from './family-of.ts';
import { allTasks, givenAt, manyTasks, outcomeOf } from './many-tasks.ts';

const family = await familyOf('whole-panel');
const rowTasks = () => [...manyTasks(family, 2), ...manyTasks(family, 3)];

const listAt = ({ drawn }: Task, key: string) =>
	(drawn.given as Record<string, readonly number[]>)[key] ?? [];
const rightAt = ({ right }: Task, key: string) => Number(right[key]);
const up = (value: number, step: number) => Math.ceil(value / step - 1e-9) * step;

/** Fig. 4-90 of the airframe handbook, read a second time: final drills by 32nds. */
const drills: Readonly<Record<number, number>> = { 3: 0.098, 4: 0.1285, 5: 0.159 };

test('every panel comes out as it does worked straight through', () => {
	for (const task of allTasks(family)) {
		const layers = listAt(task, 'layers');
		const dash = Math.max(3, Math.ceil(96 * Math.max(...layers) - 1e-9));
		const D = dash / 32;
		const lengthOf = (stack: readonly number[]) =>
			up(stack.reduce((sum, T) => sum + T, 0) + 1.5 * D, 1 / 16);
		const wanted: Record<string, number> = {
			threeT: 3 * Math.max(...layers),
			diameter: D,
			needed: layers.reduce((sum, T) => sum + T, 0) + 1.5 * D,
			length: lengthOf(layers),
			final: drills[dash] ?? NaN
		};
		let count = givenAt(task, 'count');
		if (task.id.level > 1) {
			const [length, most] = [givenAt(task, 'rowLength'), givenAt(task, 'greatestPitch')];
			const run = length - 2 * (2 * D + 1 / 16);
			const spaces = up(run / most, 1);
			count = spaces + 1;
			Object.assign(wanted, { preferred: 2 * D + 1 / 16, count, pitch: run / spaces });
		}
		if (task.id.level === 3) wanted.lengthB = lengthOf(listAt(task, 'layersB'));
		wanted.total = count * givenAt(task, 'rows');
		for (const [key, value] of Object.entries(wanted)) {
			expect(rightAt(task, key), `${task.number} ${key}`).toBeCloseTo(value, 9);
		}
	}
});

test('rows keep their distances from every edge, and the flange has room for them', () => {
	for (const task of rowTasks()) {
		const [D, pitch] = [rightAt(task, 'diameter'), rightAt(task, 'pitch')];
		const [told] = (task.drawn.told ?? []).filter(([label]) => label.startsWith('Flange'));
		const [top = NaN, bottom = 1] = (/^[\d/]+(?= in,)/.exec(told?.[1] ?? '')?.[0] ?? '').split('/');
		const half = Number(top) / Number(bottom) / 2;
		// The row on the centre line of its flange, and its end holes, keep 2D and 1/16 in.
		expect(half).toBeGreaterThanOrEqual(2 * D + 1 / 16);
		expect(half, task.number).toBeLessThanOrEqual(4 * D);
		expect(rightAt(task, 'preferred')).toBeLessThanOrEqual(4 * D);
		expect(pitch).toBeGreaterThanOrEqual(3 * D);
		expect(givenAt(task, 'greatestPitch')).toBeLessThanOrEqual(10 * D);
		expect(givenAt(task, 'rowLength')).toBeGreaterThanOrEqual(8);
	}
});

test('a doubled panel wants two lengths, and its doubler is no thinner than the skin', () => {
	for (const task of manyTasks(family, 3)) {
		const [doubler = 0, skin = 0, ...behind] = listAt(task, 'layers');
		expect(listAt(task, 'layersB')).toEqual([skin, ...behind]);
		expect(doubler).toBeGreaterThanOrEqual(skin);
		expect(rightAt(task, 'length')).toBeGreaterThan(rightAt(task, 'lengthB'));
	}
});

test('drawings are sound', () => {
	expect(drawingFaults(rowTasks().filter((_, i) => i % 60 === 0))).toEqual([]);
	expect(drawingFaults(manyTasks(family, 1).slice(0, 10))).toEqual([]);
});

const [panel] = manyTasks(family, 2);

test('a wrong row is drawn hole by hole, and a right one too', () => {
	if (!panel) throw new Error('no panel');
	const count = rightAt(panel, 'count');
	expect(circlesIn(outcomeOf(panel, 'count', count))).toHaveLength(count);
	expect(circlesIn(outcomeOf(panel, 'count', count + 2))).toHaveLength(count + 2);
	const off = outcomeOf(panel, 'pitch', rightAt(panel, 'pitch') * 1.3);
	expect(off?.says).toContain('the last hole is off the piece');
});

test('what is asked and can be seen on the metal is drawn', () => {
	if (!panel) throw new Error('no panel');
	const unseen = panel.drawn.asked.filter((key) => !outcomeOf(panel, key, panel.right[key] ?? 0));
	expect(unseen).toEqual(['threeT', 'needed', 'total']);
	expect(outcomeOf(panel, 'length', rightAt(panel, 'length') + 1 / 8)?.says).toContain(
		'bends over'
	);
});
