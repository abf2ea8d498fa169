import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { ensureBuilt, site } from './build.js';
import { Advice, main, runPackage, top } from './project.js';

/**
 * The JavaScript files a built page loads before anything is asked of it, and what they weigh:
 * those its HTML names, and everything these import statically. What they import later is left out.
 *
 * @param {string} folder of the built site
 * @param {string} page path of its HTML file, with `/`
 * @returns {Promise<{ files: string[], bytes: number }>} bytes after gzip -9, file by file
 */
export async function firstLoad(folder, page) {
	// Vite may not be installed yet when this module is read.
	const { parseAst } = await import('vite');
	/** @type {Map<string, number>} */
	const weights = new Map();

	/** @param {string} file */
	function load(file) {
		if (weights.has(file)) return;
		const text = readFileSync(join(folder, file), 'utf8');
		weights.set(file, gzipSync(text, { level: 9 }).length);
		for (const node of parseAst(text).body) {
			const source = 'source' in node ? node.source?.value : undefined;
			if (typeof source === 'string') load(posix.join(dirname(file), source));
		}
	}

	for (const named of scriptsIn(readFileSync(join(folder, page), 'utf8'))) {
		load(named.startsWith('/') ? named.slice(1) : posix.join(dirname(page), named));
	}
	const bytes = [...weights.values()].reduce((total, weight) => total + weight, 0);
	return { files: [...weights.keys()], bytes };
}

/** @param {string} html */
function scriptsIn(html) {
	const preloads = /<link(?=[^>]*\brel="modulepreload")[^>]*\bhref="([^"]+)"/g;
	const scripts = /<script[^>]*\bsrc="([^"]+)"/g;
	const starts = /\bimport\("([^"]+)"\)/g;
	return [preloads, scripts, starts].flatMap((pattern) =>
		[...html.matchAll(pattern)].map(([, path = '']) => path)
	);
}

/**
 * Builds a SvelteKit page with one sentence on it, to measure beside ours.
 *
 * @returns {Promise<{ files: string[], bytes: number }>}
 */
export async function bareFirstLoad() {
	const folder = mkdtempSync(join(tmpdir(), 'bare-page-'));
	try {
		for (const [path, text] of Object.entries(barePage)) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			writeFileSync(join(folder, path), text);
		}
		symlinkSync(join(top, 'node_modules'), join(folder, 'node_modules'));
		const built = await runPackage('vite/bin/vite.js', ['build'], { quiet: true, cwd: folder });
		if (!built) throw new Advice('The bare page could not be built.');
		return await firstLoad(join(folder, 'build'), 'index.html');
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** @type {Readonly<Record<string, string>>} */
const barePage = {
	'package.json': '{ "type": "module" }',
	'svelte.config.js': `
		import adapter from '@sveltejs/adapter-static';
		export default { compilerOptions: { runes: true }, kit: { adapter: adapter() } };`,
	'vite.config.js': `
		import { sveltekit } from '@sveltejs/kit/vite';
		export default { plugins: [sveltekit()] };`,
	'src/app.html': '<!doctype html>%sveltekit.head%<body>%sveltekit.body%</body>',
	'src/routes/+layout.js': 'export const prerender = true;',
	'src/routes/+page.svelte': '<p>A bare page.</p>'
};

if (process.argv[1] === import.meta.filename) {
	await main(async () => {
		await ensureBuilt();
		const pages = process.argv.length > 2 ? process.argv.slice(2) : ['index.html'];
		for (const page of pages) report(page, await firstLoad(site, page));
		report('bare SvelteKit page', await bareFirstLoad());
	});
}

/** @param {string} name @param {{ files: string[], bytes: number }} load */
function report(name, { files, bytes }) {
	console.log(`${name}: ${bytes} bytes of JavaScript after gzip -9, in ${files.length} files`);
}
