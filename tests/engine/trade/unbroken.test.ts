import { expect, test } from 'vitest';
import { cited } from '../../../src/lib/engine/trade/documents.ts';
import { unbroken } from '../../../src/lib/engine/trade/unbroken.ts';

test.each([
	['(airframe handbook, p. 4-32)', '(airframe handbook, p._4-32)'],
	['pp. 4-33 and 4-34, Fig. 4-79', 'pp._4-33 and 4-34, Fig._4-79'],
	['ch. 4, par. 4-58g and Table 4-10', 'ch._4, par._4-58g and Table_4-10'],
	['comes out 0.040 in too long', 'comes out 0.040_in too long'],
	['1/8 in (3.175 mm)', '1/8_in (3.175_mm)'],
	['Table of drills, step 4', 'Table of drills, step 4']
])('%s', (text, kept) => {
	expect(unbroken(text).replaceAll('\u00a0', '_')).toBe(kept);
});

test('the parts of a paragraph stay with it', () => {
	const text = cited([{ document: 'ac43', at: 'par. 4-58g(2)(a), p. 4-27', standing: 'read' }]);
	expect(text).toContain('(2)\u2060(a), p.\u00a04-\u206027');
});
