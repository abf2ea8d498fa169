import { expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { rivetDashes } from '../../../src/lib/engine/trade/stock.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const edgeDistanceTasks = await familyOf('edge-distance');

test('rivets are stocked, and every rivet comes with both heads', () => {
	const stocked: readonly number[] = rivetDashes;
	const seen = new Set<string>();
	for (const task of allTasks(edgeDistanceTasks)) {
		expect(stocked).toContain(givenAt(task, 'D') * 32);
		seen.add(JSON.stringify(task.drawn.given));
	}
	expect(seen.size).toBe(2 * rivetDashes.length);
});

test('the factor of the other head is named for both heads', () => {
	for (const task of manyTasks(edgeDistanceTasks, 2)) {
		const flush = (task.drawn.given as { head: string }).head === 'countersunk';
		const D = givenAt(task, 'D');
		const slips = slipsNamed(task, 'least', (flush ? 2 : 2.5) * D);
		expect(slips).toEqual([flush ? 'protrudingFactor' : 'flushFactor']);
		expect(slipsNamed(task, 'greatest', 10 * D)).toEqual(['greatestPitch']);
	}
});

const task = drawTask(edgeDistanceTasks, 3, 1);
const D = givenAt(task, 'D');

test.each([
	{ times: -1, says: 'off the sheet' },
	{ times: 0, says: 'off the sheet' },
	{ times: 0.3, says: 'breaks through' },
	{ times: 1.5, says: 'can crack' },
	{ times: 3, says: 'between the least and the greatest' },
	{ times: 4, says: 'farther in' },
	{ times: 4.5, says: 'can lift' },
	{ times: 8000, says: 'can lift' }
])('a hole $times D from the edge: $says', ({ times, says }) => {
	const outcome = outcomeOf(task, 'greatest', times * D);
	expect(outcome?.says).toContain(says);
	if (outcome) expect(sizeOf(outcome).width).toBeLessThan(480);
});

test('the right least holds, and the factor by itself is not drawn', () => {
	const least = task.right.least ?? 0;
	expect(outcomeOf(task, 'least', least)?.says).toContain('the least that holds');
	expect(outcomeOf(task, 'factor', 2)).toBeNull();
});
