import { describe, expect, test } from 'vitest';
import { chanceOf } from './chance.ts';
import { SKILLS, ground } from './ground.ts';
import { simulateCell } from './simulate.ts';
import { rivals } from './rivals.ts';
import { worlds } from './worlds.ts';

const learnerOf = (world: (typeof worlds)[number], seed: number) =>
	world.learner(chanceOf(`${world.id} ${seed}`), ground);

describe.each(worlds)('a learner of $id', (world) => {
	test('has a chance between 0 and 1 that fades', () => {
		const learner = learnerOf(world, 1);
		for (let day = 0; day < 30; day++) learner.answer(day % SKILLS, day);
		for (let skill = 0; skill < SKILLS; skill++) {
			const chances = [30, 40, 80].map((day) => learner.chance(skill, day));
			for (const chance of chances) {
				expect(chance).toBeGreaterThanOrEqual(0);
				expect(chance).toBeLessThanOrEqual(1);
			}
			expect(chances).toEqual([...chances].sort((a, b) => b - a));
		}
	});

	test('answers as often right as its chance says', () => {
		let [expected, right] = [0, 0];
		for (let seed = 0; seed < 200; seed++) {
			const learner = learnerOf(world, seed);
			for (let try_ = 0; try_ < 48; try_++) {
				const [skill, day] = [try_ % SKILLS, try_ < SKILLS ? 0 : 5];
				expected += learner.chance(skill, day);
				if (learner.answer(skill, day)) right++;
			}
		}
		// 9,600 answers: four standard errors are at most 0.0204
		expect(Math.abs(right - expected) / (200 * 48)).toBeLessThan(0.0204);
	});
});

test('a cell comes out the same again, and every policy spends all its problems', () => {
	const [world] = worlds;
	if (!world) throw new Error('no world');
	for (const rival of rivals) {
		for (const missed of [0, 0.5]) {
			const cell = { world, rival, problems: 96, exam: 42, missed, firstSeed: 7, learners: 5 };
			expect(simulateCell(cell)).toEqual(simulateCell(cell));
		}
	}
});
