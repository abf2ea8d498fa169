import { expect, test } from 'vitest';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { stockSheets } from '../../../src/lib/engine/trade/stock.ts';
import { howMany } from './how-many.ts';
import { allTasks, givenAt, manyTasks, outcomeOf, sizeOf, slipsNamed } from './many-tasks.ts';
import { familyOf } from './family-of.ts';

const piecesPerSheetTasks = await familyOf('pieces-per-sheet');

/** How many slips lead to a value; of more than three, marking picks none. */
function leadingTo(task: Task, key: string, value: number): number {
	return [...task.slips.values()].filter((worked) => worked[key] === value).length;
}

test('sheets are stocked, and blanks are longer than wide', () => {
	for (const task of allTasks(piecesPerSheetTasks)) {
		const [length, width] = [givenAt(task, 'sheetLength'), givenAt(task, 'sheetWidth')];
		expect(stockSheets).toContainEqual({ length, width });
		expect(givenAt(task, 'pieceLength')).toBeGreaterThan(givenAt(task, 'pieceWidth'));
	}
});

test('only the saw takes a kerf, and bends fix the blanks by the grain', () => {
	for (const task of allTasks(piecesPerSheetTasks)) {
		expect(givenAt(task, 'kerf') > 0).toBe(task.id.level > 1);
		expect(task.drawn.basis?.includes('p. 4-58')).toBe(task.id.level === 2);
	}
});

test('a kerf left out both ways costs a row too many, and is named', () => {
	let named = 0;
	for (const task of manyTasks(piecesPerSheetTasks, 2)) {
		const rows = givenAt(task, 'sheetWidth') / givenAt(task, 'pieceWidth');
		const inRow = Math.floor(givenAt(task, 'sheetLength') / givenAt(task, 'pieceLength'));
		expect(Number(task.right.lengthwise)).toBe((rows - 1) * inRow);
		// Rounded up along the sheet, the count comes out the same: that is more than can be told apart.
		if (rows === inRow + 1) continue;
		if (leadingTo(task, 'lengthwise', rows * inRow) > 3) continue;
		expect(slipsNamed(task, 'lengthwise', rows * inRow)).toContain('noKerfAcross');
		named++;
	}
	expect(named).toBeGreaterThan(howMany / 2);
});

test('trying one way only is named, whichever way is better', () => {
	const better = new Set<string>();
	for (const task of manyTasks(piecesPerSheetTasks, 3, 300)) {
		const [along, turned] = [Number(task.right.lengthwise), Number(task.right.crosswise)];
		expect(along, task.number).not.toBe(turned);
		if (leadingTo(task, 'count', Math.min(along, turned)) > 3) continue;
		const named = slipsNamed(task, 'count', Math.min(along, turned));
		expect(named).toContain(along < turned ? 'alongOnly' : 'turned');
		better.add(along < turned ? 'turned' : 'along');
	}
	expect(better.size).toBe(2);
});

const task = drawTask(piecesPerSheetTasks, 3, 5);
const count = Number(task.right.count);

test.each([
	{ entered: 0, says: 'there is room for' },
	{ entered: -5, says: 'there is room for' },
	{ entered: count - 1.5, says: 'there is room for more' },
	{ entered: count, says: 'it holds no more this way' },
	{ entered: count + 3, says: 'more than the sheet holds' },
	{ entered: 1e6, says: 'more than the sheet holds' }
])('$entered blanks: $says', ({ entered, says }) => {
	const outcome = outcomeOf(task, 'count', entered);
	expect(outcome?.says).toContain(says);
	if (outcome) expect(sizeOf(outcome).width).toBeLessThan(560);
});

test('the other way is drawn for its own number', () => {
	const [along, turned] = [Number(task.right.lengthwise), Number(task.right.crosswise)];
	expect(along).not.toBe(turned);
	expect(outcomeOf(task, 'count', along)?.says).toContain('laid along');
	expect(outcomeOf(task, 'count', turned)?.says).toContain('laid across');
	expect(outcomeOf(task, 'alongLength', 3)).toBeNull();
});
