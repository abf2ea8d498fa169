import { expect, test } from 'vitest';
import { trackedFiles } from './project-files.ts';

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
	const names = new Set(trackedFiles().map((path) => path.split('/')[0] ?? path));
	const stray = [...names].filter((name) => !name.startsWith('.') && !expected.includes(name));
	expect(stray).toEqual([]);
});
