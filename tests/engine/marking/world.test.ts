import { describe, expect, test, vi } from 'vitest';
import { prepare } from '../../../src/lib/engine/marking/mark.ts';
import { World } from '../../../src/lib/engine/marking/world.ts';
import { piecesPerSheet } from '../../../src/lib/engine/methods/pieces-per-sheet.ts';
import { shelfTask } from './shelf.ts';
import { taskOf } from './typed-answers.ts';

// Run 9.5, 5 spaces, 6 holes, pitch 1.9.
const world = new World(shelfTask);

describe('a method worked with slips', () => {
	test('is right without one', () => {
		expect(world.base).toEqual(shelfTask.right);
	});

	test('changes what comes after the slip, and nothing before', () => {
		const { run, spaces, count, pitch } = world.single('down');
		expect([run, spaces, count, pitch]).toEqual([9.5, 4, 5, 2.375]);
		expect(world.single('down')).toBe(world.single('down'));
	});

	test('takes two slips in the order of their steps, however they are named', () => {
		// One margin leaves 9.9, which is 4 spaces rounded down.
		expect(world.pair('oneMargin', 'down').pitch).toBeCloseTo(2.475, 9);
		expect(world.pair('down', 'oneMargin').pitch).toBeCloseTo(2.475, 9);
		expect(world.pair('oneMargin', 'byHoles').pitch).toBeCloseTo(9.9 / 6, 9);
	});

	test('is idle where it changes nothing with these numbers', () => {
		const even = new World({
			...shelfTask,
			drawn: { ...shelfTask.drawn, given: { ...shelfTask.drawn.given, gap: 1.9 } }
		});
		expect(even.isIdle('down')).toBe(true);
		expect(world.isIdle('down')).toBe(false);
		expect(even.isIdle('more')).toBe(false);
	});

	test('is idle where it changes no value of a list, and where there is none either way', () => {
		const flush = new World({
			...shelfTask,
			drawn: { ...shelfTask.drawn, given: { ...shelfTask.drawn.given, margin: 0 } }
		});
		expect(flush.isIdle('fromZero')).toBe(true);
		expect(world.isIdle('fromZero')).toBe(false);
		// No spaces have no pitch, but what is divided by the holes has one.
		const none = new World(shelfTask, { spaces: 0 });
		expect(none.isIdle('fromZero')).toBe(true);
		expect(none.isIdle('byHoles')).toBe(false);
	});

	test('works on with what a slip takes from another step', async () => {
		// By area 38 blanks, where 6 by 5 fit. Turned, “once more the same number” takes it from there.
		const [sheetLength, sheetWidth, pieceLength, pieceWidth] = [120, 48, 18.5, 8];
		const given = { sheetLength, sheetWidth, pieceLength, pieceWidth, kerf: 0.0625 };
		const blanks = new World(await taskOf('CS', piecesPerSheet, given));
		expect(blanks.base).toMatchObject({ lengthwise: 30, crosswise: 28 });
		expect(blanks.pair('area', 'notTurned', 'crosswise').crosswise).toBe(38);
		expect(blanks.slipsAt('crosswise')).toContain('area');
	});

	test('can be one before a step or in it, and no other', () => {
		expect(world.slipsAt('grip')).toEqual(['oneLayer', 'thinLeftOut']);
		expect(world.slipsAt('spaces')).toEqual(['oneMargin', 'noMargin', 'down', 'more']);
		expect(world.slipsAt('count')).toEqual([
			'oneMargin',
			'noMargin',
			'down',
			'more',
			'spacesForHoles'
		]);
	});

	test('works every two slips once, and before the answer where that is asked for', () => {
		expect(world.pairsAt('pitch')).toBe(world.pairsAt('pitch'));
		const task = { ...shelfTask };
		prepare(task, 'pitch');
		const pair = vi.spyOn(World.prototype, 'pair');
		World.of(task).pairsAt('pitch');
		expect(pair).not.toHaveBeenCalled();
		World.of(task).pairsAt('count');
		expect(pair).toHaveBeenCalled();
		pair.mockRestore();
	});

	test('gives the value of one step without the others', () => {
		const { pitch, positions } = world.pair('oneMargin', 'down', 'pitch');
		expect(pitch).toBeCloseTo(2.475, 9);
		expect(positions).toEqual(world.single('oneMargin').positions);
	});

	test('carries the steps before as a shop does, cut off, or to a place more, and the step itself too', () => {
		// 9.5 in 6 spaces is 1.58333…
		const each = [9.5 / 6, 1.583];
		expect(world.carried('more', 'pitch')).toEqual([...each, ...each, ...each]);
		// In 3 spaces it is 3.16666…
		const [rounded, , cut, , finer] = new World(shelfTask, { spaces: 3 }).carried(
			'spacesForHoles',
			'positions'
		);
		expect(rounded).toEqual([0.4, 3.567, 6.734].map((one) => expect.closeTo(one, 9) as number));
		expect(cut).toEqual([0.4, 3.566, 6.732].map((one) => expect.closeTo(one, 9) as number));
		expect(finer).toEqual([0.4, 3.5667, 6.7334].map((one) => expect.closeTo(one, 9) as number));
	});

	test('rounds or cuts off what comes before a step, and not the step itself', () => {
		// Grip 0.113: hundredths, tenths, sixteenths; cut to thousandths and hundredths.
		const at = (last: string, key: string) =>
			new World(shelfTask, { spaces: 3 }).roundedOnTheWay(last).map((values) => values[key]);
		expect(at('positions', 'grip')).toEqual([0.11, 0.1, 0.125, 0.113, 0.11]);
		expect(at('positions', 'pitch')).toEqual([3.17, 3.2, 3.1875, 3.166, 3.16]);
		expect(at('pitch', 'pitch')).toEqual(Array(5).fill(9.5 / 3));
		// Nothing is rounded in a whole number.
		expect(at('positions', 'count')).toEqual(Array(5).fill(4));
	});
});

describe('worked on with a wrong value', () => {
	const after = new World(shelfTask, { spaces: 4 });

	test('goes by it', () => {
		expect(after.base).toMatchObject({ run: 9.5, spaces: 4, count: 5, pitch: 2.375 });
		expect(after.single('byHoles').pitch).toBeCloseTo(1.9, 9);
		expect(after.carried('oneMargin', 'pitch')).toContain(2.475);
		expect(after.slipsAt('pitch')).toEqual(['oneMargin', 'noMargin', 'byHoles']);
		expect(after.slipsAt('spaces')).toEqual([]);
	});

	test('has no slip in the step that was put in', () => {
		const { slipIds } = new World(shelfTask, { spaces: 4 });
		expect(slipIds).not.toContain('down');
		expect(slipIds).toContain('byHoles');
		expect(world.slipIds).toContain('down');
	});

	test('has no value where the trade has none', () => {
		const none = new World(shelfTask, { spaces: 0, count: 0 });
		const { run, pitch } = none.pair('oneMargin', 'byHoles');
		expect(run).toBeCloseTo(9.9, 9);
		expect(pitch).toBeCloseTo(9.9, 9);
	});
});
