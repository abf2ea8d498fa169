import { readFileSync } from 'node:fs';
import { join, parse } from 'node:path';
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
		Object.values(manifest).find((one) => !one.src && one.name === parse(module).name);
	if (!entry) throw new Error(`the built site has no file of its own for ${module}`);
	return entry.file;
}

/** Has everything that a module exports throw, as a fault in it would. */
export async function plantThrow(page: Page, module: string): Promise<void> {
	const file = fileOf(module);
	const names = exportsOf(readFileSync(join(site, file), 'utf8')).map((name) => `f as ${name}`);
	const body = `${thrower} export { ${names.join(', ')} };`;
	await page.route(`**/${file}`, (route) =>
		route.fulfill({ contentType: 'text/javascript', body })
	);
}

/** Has the drawing of a family throw, and nothing else of it. */
export async function plantInFigure(page: Page, module: string): Promise<void> {
	const file = fileOf(module);
	const planted = "figure: () => { throw new Error('planted'); }, ";
	const parts = readFileSync(join(site, file), 'utf8').split(/\bfigure(?=[:(])/);
	if (parts.length !== 2) throw new Error(`${module} has not one figure`);
	const body = parts.join(`${planted}figureBefore`);
	await page.route(`**/${file}`, (route) =>
		route.fulfill({ contentType: 'text/javascript', body })
	);
}

/** Has the site no longer have a module, as after an update. */
export async function takeAway(page: Page, module: string): Promise<void> {
	await page.route(`**/${fileOf(module)}`, (route) => route.fulfill({ status: 404 }));
}

/** A function that throws, and so does whatever is taken from it: a module may be an export too. */
const thrower = `const f = new Proxy(
	() => { throw new Error('planted'); },
	{ get: (_, key) => (key === 'then' ? undefined : f) }
);`;

function exportsOf(code: string): string[] {
	return parseAst(code).body.flatMap((node) =>
		node.type === 'ExportNamedDeclaration'
			? node.specifiers.flatMap(({ exported }) => ('name' in exported ? [exported.name] : []))
			: []
	);
}
