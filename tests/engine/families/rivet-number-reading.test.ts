import { fraction } from '../../../src/lib/engine/quantity/kinds.ts';
import { describe, expect, test } from 'vitest';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { headMark } from '../../../src/lib/engine/figures/parts/rivet.ts';
import { normalPartNumber } from '../../../src/lib/engine/quantity/part-number.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
import { drawingFaults } from './drawing-faults.ts';
import { manyTasks, outcomeOf } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const rivetNumberReadingTasks = await familyOf('rivet-number-reading');

describe.each(levels)('level %i', (level) => {
	const tasks = manyTasks(rivetNumberReadingTasks, level);

	test('numbers stand for stocked rivets', () => {
		for (const { drawn, right } of tasks) {
			expect(normalPartNumber(String(drawn.given.number))).toBe(drawn.given.number);
			expect(rivetDashes).toContain(Number(right.diameter) * 32);
			expect(Number(right.length)).toBeGreaterThan(Number(right.diameter));
		}
	});

	test('figures and effects can be drawn', () => {
		expect(drawingFaults(tasks)).toEqual([]);
		for (const task of tasks) {
			const sizes = task.drawn.asked.filter((key) => key === 'diameter' || key === 'length');
			expect(sizes.every((key) => outcomeOf(task, key, task.right[key] ?? 0))).toBe(true);
		}
	});
});

test('a size is not read from a dash number', () => {
	const { steps } = rivetNumberReadingTasks.method;
	expect([steps.diameter?.kind, steps.length?.kind]).toEqual([fraction, fraction]);
});

// FAA-H-8083-31B, ch. 4, p. 4-33, Fig. 4-77.
test.each([
	['A', 'none'],
	['AD', '1 round ink'],
	['D', '1 round rivet'],
	['DD', '2 bars rivet'],
	['B', '2 lines']
])('the head of alloy %s is drawn with its mark: %s', (letters, mark) => {
	const shapes = headMark(0, 0, 10, letters).filter((shape) => shape.kind === 'path');
	const [first] = shapes;
	const form = first?.d.includes('A') ? 'round' : first?.d.endsWith('Z') ? 'bars' : 'lines';
	const fill = first?.fill === 'none' ? '' : ` ${first?.fill}`;
	expect(first ? `${shapes.length} ${form}${fill}` : 'none').toBe(mark);
});
