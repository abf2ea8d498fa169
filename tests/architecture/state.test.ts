import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { top } from '../../src/scripts/project.js';
import { filesIn } from './project-files.ts';

/** What `$state` may hold: nothing yet, an element, or a plain value. All else is `$state.raw`. */
const plain = /^(?:|null|true|false|-?\d+|'[^']*')$/;

test('no state is watched in depth: pages are built without that part of Svelte (src/plugins/lighten.ts)', () => {
	const deep = filesIn('src').flatMap((path) => {
		if (!/\.svelte(?:\.ts)?$/.test(path)) return [];
		const text = readFileSync(join(top, path), 'utf8');
		return [...text.matchAll(/\$state(<[^;=()]*(?:\{[^}]*\})?[^;=()]*>)?\(([^)]*)\)/g)]
			.filter(
				([, type = '', value = '']) => !plain.test(value.trim()) || /[{[]|Record|Awaited/.test(type)
			)
			.map(([whole]) => `${path}: ${whole}`);
	});
	expect(deep).toEqual([]);
});
