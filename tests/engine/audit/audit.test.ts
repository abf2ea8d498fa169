import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { significant } from '../../../src/lib/engine/tasks/difficulty.ts';
import { auditOf, fewestStories, fewestTasks, leastRise } from './features.ts';

const families = await loadFamilies();

const audits = families.map((family) => ({
	id: family.id,
	byLevel: levels.map((level) => auditOf(family, level))
}));

describe.each(audits.map(({ id, byLevel }) => [id, byLevel] as const))('%s', (_, byLevel) => {
	test('names its chief slips at every level', () => {
		expect(byLevel.filter(({ chief }) => !chief).map(({ level }) => level)).toEqual([]);
	});

	test('has many tasks and stories at every level', () => {
		for (const { level, tasks, stories } of byLevel) {
			expect(tasks, `different tasks at level ${level}`).toBeGreaterThanOrEqual(fewestTasks);
			expect(stories, `stories at level ${level}`).toBeGreaterThanOrEqual(fewestStories);
		}
	});

	test('is harder from level to level', () => {
		byLevel.slice(1).forEach(({ level, difficulty }, i) => {
			const rise = difficulty - (byLevel[i]?.difficulty ?? 0);
			expect(rise, `level ${level} above the one before`).toBeGreaterThanOrEqual(leastRise);
		});
	});
});

test.each([
	['0.032 in', 2],
	['1/8 in (−4)', 2],
	['0.1875 in', 4],
	['MS20470AD4-5', 7],
	['No. 30', 2],
	['10 3/4 in', 4]
])('%s has %i digits', (written, digits) => {
	expect(significant(written)).toBe(digits);
});
