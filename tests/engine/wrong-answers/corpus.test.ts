import { describe, expect, it } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { allRules } from './all-rules.ts';
import { corpus, halves } from './corpus.ts';

const answers = await corpus();
const rulesOf = (family: string) => allRules.filter((rule) => rule.family === family);

describe('the corpus of wrong answers', () => {
	it('holds more than a thousand for each half of the seeds', () => {
		for (const half of halves)
			expect(answers.filter((answer) => answer.half === half).length).toBeGreaterThan(1000);
	});

	it('has no rule that never shows', () => {
		const shown = new Set(answers.flatMap(({ rules }) => rules));
		const dead = allRules.filter((rule) => !shown.has(rule));
		expect(dead.map(({ family, key, why }) => `${family}, ${key}: ${why}`)).toEqual([]);
	});

	it.each(cards.map(({ id }) => id))('has a dozen rules for %s', (family) => {
		expect(rulesOf(family).length).toBeGreaterThanOrEqual(12);
	});
});
