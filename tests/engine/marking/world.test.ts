import { describe, expect, test } from 'vitest';
import { World } from '../../../src/lib/engine/marking/world.ts';
import { shelfTask } from './shelf.ts';

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

	test('carries every step as a shop does', () => {
		// 9.5 in 6 spaces is 1.58333…
		expect(world.carried('more').pitch).toBe(1.583);
		expect(world.carried('more').spaces).toBe(6);
	});

	test('rounds what comes before a step, and not the step itself', () => {
		// Grip 0.113 and pitch 1.9: hundredths, tenths, sixteenths.
		expect(world.roundedOnTheWay('positions', 0).grip).toBe(0.11);
		expect(world.roundedOnTheWay('positions', 1).grip).toBe(0.1);
		expect(world.roundedOnTheWay('positions', 2).grip).toBe(0.125);
		expect(world.roundedOnTheWay('positions', 3).grip).toBe(shelfTask.right.grip);
		expect(world.roundedOnTheWay('grip', 0).grip).toBe(shelfTask.right.grip);
		const { positions } = world.roundedOnTheWay('positions', 2);
		expect(positions).toEqual([0.4, 2.275, 4.15, 6.025, 7.9, 9.775]);
	});
});

describe('worked on with a wrong value', () => {
	const after = new World(shelfTask, { spaces: 4 });

	test('goes by it', () => {
		expect(after.base).toMatchObject({ run: 9.5, spaces: 4, count: 5, pitch: 2.375 });
		expect(after.single('byHoles').pitch).toBeCloseTo(1.9, 9);
		expect(after.carried('oneMargin').pitch).toBe(2.475);
		expect(after.roundedOnTheWay('pitch', 0).pitch).toBe(2.375);
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
