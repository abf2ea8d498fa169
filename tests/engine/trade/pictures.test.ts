import { expect, test } from 'vitest';
import { checkCards } from '../../../src/lib/engine/check/catalogue.ts';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { pictureOf } from '../../../src/lib/engine/figures/words/pictures.ts';

test('every family and every lab check has a picture with metal in it', () => {
	for (const { id } of [...cards, ...checkCards]) {
		expect(
			pictureOf(id)?.shapes.some(
				(one) => one.kind === 'path' && /^(metal|rivet|waste|hatch)/.test(one.fill)
			),
			`${id}: name the word that it is recognised by in figures/words/pictures.ts`
		).toBe(true);
	}
});
