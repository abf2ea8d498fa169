import { expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const blankSizeTasks = await familyOf('blank-size');

test('trims are those of the work that the basis names', () => {
	for (const task of allTasks(blankSizeTasks)) {
		const basis = task.drawn.basis ?? '';
		for (const trim of [givenAt(task, 'endTrim'), givenAt(task, 'edgeTrim')]) {
			if (basis.includes('Snips')) expect(trim).toBe(1 / 32);
			else if (basis.includes('curved flange')) expect(trim).toBe(1 / 4);
			else expect(trim >= 1 / 2 && trim <= 1).toBe(true);
		}
	}
});

test('the third level has two unlike trims, the others one', () => {
	for (const task of allTasks(blankSizeTasks)) {
		const alike = givenAt(task, 'endTrim') === givenAt(task, 'edgeTrim');
		expect(alike).toBe(task.id.level < 3);
	}
});

test('trim on the wrong number of ends is named', () => {
	for (const task of manyTasks(blankSizeTasks, 2)) {
		const [both, trim] = [givenAt(task, 'trimmedEnds') === 2, givenAt(task, 'endTrim')];
		const wrong = givenAt(task, 'finishedLength') + (both ? 1 : 2) * trim;
		expect(slipsNamed(task, 'blankLength', wrong)).toEqual([both ? 'oneEnd' : 'bothEnds']);
	}
});

const task = drawTask(blankSizeTasks, 3, 2);
const finished = givenAt(task, 'finishedLength');
const right = Number(task.right.blankLength);

test.each([
	{ entered: -1, says: 'smaller than the finished part' },
	{ entered: finished - 1, says: 'smaller than the finished part' },
	{ entered: finished, says: 'Nothing is left to trim' },
	{ entered: (finished + right) / 2, says: 'a side stays rough' },
	{ entered: right, says: 'as wanted' },
	{ entered: right + 2, says: 'the rest is waste' },
	{ entered: 1e6, says: 'the rest is waste' }
])('a blank $entered in long: $says', ({ entered, says }) => {
	const outcome = outcomeOf(task, 'blankLength', entered);
	expect(outcome?.says).toContain(says);
	if (outcome) expect(sizeOf(outcome).width).toBeLessThan(520);
});

test('the width is drawn too, the trim alone is not', () => {
	const width = Number(task.right.blankWidth);
	expect(outcomeOf(task, 'blankWidth', width)?.says).toContain('as wanted');
	expect(outcomeOf(task, 'addedLength', 1)).toBeNull();
});
