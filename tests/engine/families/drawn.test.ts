import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drawnSheet } from './drawn-sheet.ts';

/*
 * Every family's drawings as they were looked at. When one is meant to change, write them again
 * with `npx vitest run --project unit tests/engine/families/drawn.test.ts -u`, and look at them.
 */

const sheets = (await loadFamilies()).flatMap((family) =>
	levels.map((level) => [`${family.code}${level}.svg`, family, level] as const)
);

test.each(sheets)('%s', async (name, family, level) => {
	await expect(drawnSheet(family, level)).toMatchFileSnapshot(`./drawn/${name}`);
});

test('no drawing is left of a family that went', () => {
	const stored = readdirSync(new URL('drawn/', import.meta.url));
	// Those of a new family are written only when this file has run.
	const drawn = new Set<string>(sheets.map(([name]) => name));
	expect(stored.filter((name) => !drawn.has(name))).toEqual([]);
});
