import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { misreadName } from '../../../src/lib/engine/trade/table/misread-as.ts';
import { functionPlaces, functions, importing } from '../../../src/lib/engine/trade/functions.ts';

const trade = new URL('../../../src/lib/engine/trade/', import.meta.url);

describe('where a function stands', () => {
	test.each([...functionPlaces])('%s', async (name, { file, exported, misread }) => {
		expect(existsSync(new URL(file, trade))).toBe(true);
		const module = (await import(new URL(file, trade).href)) as Record<string, unknown>;
		if (misread) expect(misreadName(exported, misread)).toBe(name);
		else expect(module[exported]).toBe(functions[name]);
	});

	test('every function has a place', () => {
		expect([...functionPlaces.keys()]).toEqual(Object.keys(functions));
	});
});

describe('the code that brings functions in', () => {
	test('imports each file once, and only the files of what is called', () => {
		const names = ['finalDrillAbove', 'upTo', 'finalDrill', 'pilotDrill', 'upTo'];
		expect(importing(names, '/trade')).toBe(
			[
				"import { finalDrill as f_finalDrill, pilotDrill as f_pilotDrill } from '/trade/tables/rivet-drills.ts';",
				"import { upTo as f_upTo } from '/trade/functions/rounding.ts';",
				"import { misreadAs as f_misread } from '/trade/table/misread-as.ts';",
				"const f = {finalDrill: f_finalDrill, finalDrillAbove: f_misread(f_finalDrill, 'above'), pilotDrill: f_pilotDrill, upTo: f_upTo};"
			].join('\n')
		);
	});

	test('for no function is an empty object', () => {
		expect(importing([], '/trade')).toBe('const f = {};');
	});

	test('refuses a name that is none', () => {
		expect(() => importing(['upTo', 'constructor'], '/trade')).toThrow(
			'no trade function is called constructor'
		);
	});
});
