import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { top } from '../../src/scripts/project.js';

test('routes are plain words, as pages read them (src/plugins/kit-routes.js)', () => {
	const all = readdirSync(join(top, 'src/routes'), { recursive: true, withFileTypes: true });
	const folders = all.filter((one) => one.isDirectory()).map(({ name }) => name);
	expect(folders).toContain('practice');
	for (const name of folders) expect(name).toMatch(/^[a-z]+$/);
});

test('no page loads data or sends addresses elsewhere (src/plugins/lighten.ts)', () => {
	const hooks = readdirSync(join(top, 'src')).filter((name) => name.startsWith('hooks'));
	expect(hooks.sort()).toEqual(['hooks.client.ts', 'hooks.server.ts']);
	const files = readdirSync(join(top, 'src/routes'), { recursive: true, encoding: 'utf8' });
	expect(files.filter((name) => /\+.*\.[jt]s$/.test(name))).toEqual(['+layout.ts']);
});
