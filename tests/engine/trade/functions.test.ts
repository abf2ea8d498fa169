import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { functionPlaces, functions, importing } from '../../../src/lib/engine/trade/functions.ts';

const trade = new URL('../../../src/lib/engine/trade/', import.meta.url);

describe('where a function stands', () => {
	test.each([...functionPlaces])('%s', async (name, { file, exported, code }) => {
		expect(existsSync(new URL(file, trade))).toBe(true);
		const module = (await import(new URL(file, trade).href)) as Record<string, unknown>;
		const found = code
			.split('.')
			.slice(1)
			.reduce((value, key) => (value as Record<string, unknown>)[key], module[exported]);
		expect(found).toBe(functions[name]);
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
				'const f = { finalDrill: f_finalDrill, finalDrillAbove: f_finalDrill.misreadings.above, pilotDrill: f_pilotDrill, upTo: f_upTo };'
			].join('\n')
		);
	});

	test('for no function is an empty object', () => {
		expect(importing([], '/trade')).toBe('const f = {  };');
	});

	test('refuses a name that is none', () => {
		expect(() => importing(['upTo', 'constructor'], '/trade')).toThrow(
			'no trade function is called constructor'
		);
	});
});
