import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { formulaSheet, symbolsOf } from '../../../src/lib/engine/lessons/formulas.ts';
import { markedKeys, waysOf } from '../../../src/lib/engine/lessons/lesson.ts';
import { skillOf } from '../../../src/lib/engine/schedule/syllabus.ts';

const families = await loadFamilies();
const groups = formulaSheet(families).flatMap((topic) => topic.groups);

test('the formula sheet has every step of every method once, each with its source', () => {
	const printed = groups.flatMap(({ method, lines }) =>
		lines.map(({ key }) => skillOf(method, key))
	);
	const wanted = families
		.flatMap(waysOf)
		.flatMap(({ method }) => markedKeys(method).map((key) => skillOf(method, key)));
	expect(new Set(printed)).toEqual(new Set(wanted));
	expect(printed.length).toBe(new Set(printed).size);
	for (const { lines } of groups)
		for (const { key, source } of lines) expect(source, key).not.toBe('');
});

test('the symbols of the trade stand for one thing each', () => {
	const symbols = symbolsOf(families);
	expect(symbols.map(({ symbol }) => symbol)).toEqual(
		expect.arrayContaining(['BA', 'D', 'K', 'MLD', 'N', 'R', 'SB', 'T', 'TDW'])
	);
	expect(symbols.find(({ symbol }) => symbol === 'T')?.meaning).toBe('thickness');
});
