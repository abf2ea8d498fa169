import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { faults } from './faults.ts';

const top = resolve(import.meta.dirname, '../..');

test('every fault has its place: its text stands once in its file, and is changed', () => {
	const misplaced = faults.filter(({ file, find, replace }) => {
		const pieces = readFileSync(resolve(top, file), 'utf8').split(find);
		return pieces.length !== 2 || find === replace;
	});
	expect(misplaced.map(({ name, file }) => `${name}: ${file}`)).toEqual([]);
});

test('no two faults are the same', () => {
	const places = faults.map(({ file, find, replace }) => [file, find, replace].join('\n'));
	expect(new Set(places).size).toBe(faults.length);
});
