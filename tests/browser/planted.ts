import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Page } from 'playwright-core';
import { parseAst } from 'vite';
import { site } from '../../src/scripts/build.js';
import { top } from '../../src/scripts/project.js';

/** The file of the built site that a module is in; it must be one that is imported late. */
function fileOf(module: string): string {
	const path = join(top, '.svelte-kit/output/client/.vite/manifest.json');
	const manifest: Record<string, { file: string; name: string; src?: string }> = JSON.parse(
		readFileSync(path, 'utf8')
	);
	// One that is also imported at once stands there by its name only.
	const entry =
		manifest[module] ??
		Object.values(manifest).find((one) => !one.src && one.name === basename(module, '.ts'));
	if (!entry) throw new Error(`the built site has no file of its own for ${module}`);
	return entry.file;
}

/** Has everything that a module exports throw, as a fault in it would. */
export async function plantThrow(page: Page, module: string): Promise<void> {
	const file = fileOf(module);
	const body = [...exportsOf(readFileSync(join(site, file), 'utf8'))]
		.map(
			(name, i) => `function f${i}() { throw new Error('planted'); } export { f${i} as ${name} };`
		)
		.join('\n');
	await page.route(`**/${file}`, (route) =>
		route.fulfill({ contentType: 'text/javascript', body })
	);
}

/** Has the site no longer have a module, as after an update. */
export async function takeAway(page: Page, module: string): Promise<void> {
	await page.route(`**/${fileOf(module)}`, (route) => route.fulfill({ status: 404 }));
}

function* exportsOf(code: string): Generator<string> {
	for (const node of parseAst(code).body) {
		if (node.type !== 'ExportNamedDeclaration') continue;
		for (const { exported } of node.specifiers) {
			if (exported.type === 'Identifier') yield exported.name;
		}
	}
}
