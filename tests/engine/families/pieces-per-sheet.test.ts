import { expect, test } from 'vitest';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { stockSheets } from '../../../src/lib/engine/trade/stock.ts';
import { howMany } from './how-many.ts';
import {
	allTasks,
	givenAt,
	manyTasks,
	outcomeOf,
	sizeOf,
	slipsNamed,
	slipsOf
} from './many-tasks.ts';
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

test('a kerf left out both ways costs a row or a blank of each row, and is named', () => {
	const named = new Map<string, number>();
	for (const task of manyTasks(piecesPerSheetTasks, 2)) {
		const across = givenAt(task, 'sheetWidth') / givenAt(task, 'pieceWidth');
		const along = givenAt(task, 'sheetLength') / givenAt(task, 'pieceLength');
		const [rows, inRow] = [Math.floor(across), Math.floor(along)];
		const id = rows === across ? 'noKerfAcross' : 'noKerfAlong';
		const lost = rows === across ? inRow : rows;
		expect(Number(task.right.lengthwise)).toBe(rows * inRow - lost);
		if (leadingTo(task, 'lengthwise', rows * inRow) > 3) continue;
		expect(slipsNamed(task, 'lengthwise', rows * inRow), task.number).toContain(id);
		named.set(id, (named.get(id) ?? 0) + 1);
	}
	expect([...named.keys()].sort()).toEqual(['noKerfAcross', 'noKerfAlong']);
	expect([...named.values()].reduce((all, one) => all + one)).toBeGreaterThan(howMany / 2);
});

test('the kerf costs blanks that are turned, too, along the sheet and across', () => {
	const shown = new Set(
		manyTasks(piecesPerSheetTasks, 3, 300).flatMap(({ slips }) => [...slips.keys()])
	);
	for (const id of ['noKerfAlong', 'noKerfAcross', 'noKerfTurnedAlong', 'noKerfTurnedAcross'])
		expect(shown).toContain(id);
});

test('trying one way only is named, whichever way is better', () => {
	const better = new Set<string>();
	for (const task of manyTasks(piecesPerSheetTasks, 3, 300)) {
		const [along, turned] = [Number(task.right.lengthwise), Number(task.right.crosswise)];
		expect(along, task.number).not.toBe(turned);
		const least = Math.min(along, turned);
		const typed = { lengthwise: along, crosswise: turned, count: least };
		expect(slipsOf(task, typed, 'count')).toContain(along < turned ? 'alongOnly' : 'acrossOnly');
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

test('of sawn blanks either way of laying them is the better one about as often', () => {
	const tasks = manyTasks(piecesPerSheetTasks, 3);
	const turned = tasks.filter(({ right }) => Number(right.crosswise) > Number(right.lengthwise));
	expect(turned.length / tasks.length).toBeGreaterThan(0.35);
	expect(turned.length / tasks.length).toBeLessThan(0.65);
});
