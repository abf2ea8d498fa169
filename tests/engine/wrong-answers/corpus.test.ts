import { describe, expect, it } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { allRules } from './all-rules.ts';
import { lengthMistakes } from '../../../src/lib/engine/quantity/kinds/length.ts';
import { corpus, halves } from './corpus.ts';
import { namesOf } from './rule.ts';
import { kinds } from './told.ts';

const answers = await corpus();
const rulesOf = (family: string) => allRules.filter((rule) => rule.family === family);

describe('the corpus of wrong answers', () => {
	it('holds more than a thousand for each half of the seeds', () => {
		for (const half of halves)
			expect(answers.filter((answer) => answer.half === half).length).toBeGreaterThan(1000);
	});

	it('has no rule that never shows', async () => {
		const more = await corpus({ seedsEach: 40, rareOnOneIn: 1 });
		const shown = new Set(more.flatMap(({ rules }) => rules));
		const dead = allRules.filter((rule) => !shown.has(rule));
		expect(dead.map(({ family, key, why }) => `${family}, ${key}: ${why}`)).toEqual([]);
	});

	it('knows every cause it calls true', () => {
		const units = (lengthMistakes.units ?? []).map(({ id }) => id);
		const strange = new Set<string>();
		for (const { task, rules } of answers) {
			const names = rules.flatMap((rule) => namesOf(rule, task.drawn.given));
			for (const name of names.flatMap((one) => one.split('+'))) {
				const [kind = '', step] = name.split(':');
				const known = [...Object.keys(task.method.slips), ...units, ...kinds].includes(kind);
				const { steps, given } = task.method;
				const inPlace = step === undefined || Object.hasOwn({ ...given, ...steps }, step);
				if (!known || !inPlace) strange.add(`${task.method.id}: ${name}`);
			}
		}
		const choose = `choose a slip of the method or one of ${[...units, ...kinds].join(', ')}`;
		expect([...strange], choose).toEqual([]);
	});

	it.each(cards.map(({ id }) => id))('has a dozen rules for %s', (family) => {
		const where = `write rules for ${family} in tests/engine/wrong-answers/<topic>/${family}.ts`;
		expect(rulesOf(family).length, where).toBeGreaterThanOrEqual(12);
	});
});
