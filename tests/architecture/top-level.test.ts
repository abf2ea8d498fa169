import { expect, test } from 'vitest';
import { topLevel } from './project-files.ts';

const expected = [
	'package.json',
	'package-lock.json',
	'svelte.config.js',
	'vite.config.ts',
	'README.md',
	'DEVELOPERS.md',
	'LICENSE',
	'src',
	'static',
	'tests'
];

test('the top level holds the agreed files and folders, and dot files', () => {
	const stray = topLevel().filter((name) => !name.startsWith('.') && !expected.includes(name));
	expect(stray).toEqual([]);
});
