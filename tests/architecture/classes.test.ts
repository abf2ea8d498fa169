import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { top } from '../../src/scripts/project.js';
import { filesIn } from './project-files.ts';

test('no class is a list or an object: pages are built without that part of Svelte (src/plugins/lighten.ts)', () => {
	const made = filesIn('src').flatMap((path) => {
		if (!path.endsWith('.svelte')) return [];
		const text = readFileSync(join(top, path), 'utf8');
		return [...text.matchAll(/class=\{\s*[[{].*/g)].map(([whole]) => `${path}: ${whole}`);
	});
	expect(made).toEqual([]);
});
