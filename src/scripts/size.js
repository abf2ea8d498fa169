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
	const named = scriptsIn(readFileSync(join(folder, page), 'utf8')).map((path) =>
		path.startsWith('/') ? path.slice(1) : posix.join(dirname(page), path)
	);
	const weights = await loaded(folder, named);
	return { files: [...weights.keys()], bytes: total(weights) };
}

/**
 * Files and everything that they import statically.
 *
 * @param {string} folder @param {readonly string[]} files
 * @param {Map<string, Weighed>} [known] files that were weighed before
 * @returns {Promise<Map<string, number>>} bytes after gzip -9, by file
 */
async function loaded(folder, files, known = new Map()) {
	// Vite may not be installed yet when this module is read.
	const { parseAst } = await import('vite');
	/** @type {Map<string, number>} */
	const weights = new Map();

	/** @param {string} file */
	function load(file) {
		if (weights.has(file)) return;
		const one = known.get(file) ?? weighed(file);
		known.set(file, one);
		weights.set(file, one.weight);
		one.imports.forEach(load);
	}

	/** @param {string} file @returns {Weighed} */
	function weighed(file) {
		const text = readFileSync(join(folder, file), 'utf8');
		const imports = parseAst(text).body.flatMap((node) => {
			const source = 'source' in node ? node.source?.value : undefined;
			return typeof source === 'string' ? [posix.join(dirname(file), source)] : [];
		});
		return { weight: gzipSync(text, { level: 9 }).length, imports };
	}

	files.forEach(load);
	return weights;
}

/** @typedef {{ weight: number, imports: readonly string[] }} Weighed */

/** @param {ReadonlyMap<string, number>} weights */
function total(weights) {
	return [...weights.values()].reduce((sum, weight) => sum + weight, 0);
}

/**
 * What a page loads until a task of each family can be answered: what it loads before anything is
 * asked of it, its own parts, and the family's file with all that this imports. `first-page.js`
 * measures the same in Chromium.
 *
 * @param {string} folder of the built site
 * @returns {Promise<Record<string, number>>} bytes after gzip -9 by topic and family, file by file
 */
export async function familyLoads(folder) {
	const page = 'practice/index.html';
	const html = readFileSync(join(folder, page), 'utf8');
	const { files } = await firstLoad(folder, page);
	const [app = ''] = files.filter((file) => /\/entry\/app\.[^/]+$/.test(file));
	const nodes = (/node_ids: \[([^\]]*)\]/.exec(html)?.[1] ?? '').split(',').map(Number);
	const parts = importsIn(folder, app).filter((file) =>
		// The page that tells of an error is loaded with every page, as node 1.
		[...nodes, 1].some((node) => file.includes(`/nodes/${node}.`))
	);
	/** @type {Map<string, Weighed>} */
	const known = new Map();
	const own = await loaded(folder, [...files, ...parts], known);
	const loads = [...own.keys()].flatMap((file) => familyFiles(folder, file));
	/** @type {Record<string, number>} */
	const bytes = {};
	for (const [family, file] of loads)
		bytes[family] = total(await loaded(folder, [...own.keys(), file], known));
	return bytes;
}

/**
 * The families that a file loads when one is wanted, each with its file.
 *
 * @param {string} folder @param {string} file @returns {[string, string][]}
 */
function familyFiles(folder, file) {
	const text = readFileSync(join(folder, file), 'utf8');
	const loads = /["'`]\.\/([\w-]+\/[\w-]+)\.ts["'`]:\(\)=>[^,]*?import\(["'`]([^"'`]+)["'`]\)/g;
	return [...text.matchAll(loads)].map(([, family = '', path = '']) => [
		family,
		posix.join(dirname(file), path)
	]);
}

/** @param {string} folder @param {string} file @returns {string[]} what a file imports later */
function importsIn(folder, file) {
	const text = readFileSync(join(folder, file), 'utf8');
	return [...text.matchAll(/import\(["'`]([^"'`]+)["'`]\)/g)].map(([, path = '']) =>
		posix.join(dirname(file), path)
	);
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
 * @template T
 * @param {(folder: string) => Promise<T>} use what is done with the built site before it is removed
 */
export async function withBarePage(use) {
	const folder = mkdtempSync(join(tmpdir(), 'bare-page-'));
	try {
		for (const [path, text] of Object.entries(barePage)) {
			mkdirSync(dirname(join(folder, path)), { recursive: true });
			writeFileSync(join(folder, path), text);
		}
		symlinkSync(join(top, 'node_modules'), join(folder, 'node_modules'));
		const built = await runPackage('vite/bin/vite.js', ['build'], { quiet: true, cwd: folder });
		if (!built) throw new Advice('The bare page could not be built.');
		return await use(join(folder, 'build'));
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
	'src/routes/+page.svelte': '<p>A bare page.</p>',
	// What Enter takes where nothing is to be worked out: one word is another one after it.
	'src/routes/enter/+page.svelte': `
		<script>
			let presses = $state(0);
			let hydrated = $state(false);
			$effect(() => { hydrated = true; });
			function count(event) {
				event.preventDefault();
				presses++;
			}
		</script>
		<form onsubmit={count}><input data-ready={hydrated} /></form>
		<p role="status">{presses}</p>`
};

/** Where it is noted what every family weighs. */
export const noted = join(top, 'tests/data/first-load.json');

if (process.argv[1] === import.meta.filename) {
	await main(async () => {
		await ensureBuilt();
		const [first, ...more] = process.argv.slice(2);
		if (first === '--note') {
			const text = JSON.stringify(await familyLoads(site), null, '\t');
			writeFileSync(noted, `${text}\n`);
			return;
		}
		for (const page of [first ?? 'index.html', ...more]) report(page, await firstLoad(site, page));
		report('bare SvelteKit page', await withBarePage((folder) => firstLoad(folder, 'index.html')));
	});
}

/** @param {string} name @param {{ files: string[], bytes: number }} load */
function report(name, { files, bytes }) {
	console.log(`${name}: ${bytes} bytes of JavaScript after gzip -9, in ${files.length} files`);
}
