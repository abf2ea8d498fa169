import { posix } from 'node:path';

/**
 * Who may import what, read by the lint rule and by tests/architecture/layers.test.ts.
 *
 * A file belongs to the deepest folder listed here that holds it; a `flat` folder holds only the
 * files directly in it. It may import its own folder, the folders named, and the packages named;
 * `packages` left out means any package.
 *
 * @typedef {{ imports: readonly string[], packages?: readonly string[], flat?: boolean }} Layer
 */

const engine = 'src/lib/engine';
const enginePackages = ['mathjs', 'seedrandom', 'ts-fsrs', 'fraction.js', 'valibot', 'fmin'];

// Inside the engine a folder may import every folder after it.
const engineFolders = [
	'sets',
	'time-plan',
	'schedule',
	'check',
	'lessons',
	'marking',
	'tasks',
	'families',
	'panel',
	'figures',
	'methods',
	'trade',
	'solver',
	'quantity'
].map((name) => `${engine}/${name}`);

/** @type {Readonly<Record<string, Layer>>} */
export const layers = {
	src: { imports: ['src/routes', 'src/lib'], flat: true },
	'src/routes': { imports: ['src/lib'] },
	'src/lib/app': { imports: ['src/lib/ui', 'src/lib/storage', 'src/lib/exchange', engine] },
	'src/lib/exchange': { imports: [engine], packages: ['valibot', 'fflate', 'd3-dsv'] },
	'src/lib/ui': { imports: [engine] },
	'src/lib/storage': { imports: [engine] },
	'src/cli': { imports: ['src/lib/exchange', engine] },
	'src/plugins': { imports: [engine] },
	'src/scripts': { imports: [engine] },
	[engine]: { imports: engineFolders, packages: enginePackages, flat: true },
	...Object.fromEntries(
		engineFolders.map((folder, place) => [
			folder,
			{ imports: engineFolders.slice(place + 1), packages: enginePackages }
		])
	)
};

/**
 * Packages that only these files may import: mathjs is large, and unsafe on text that a person
 * typed unless that text was checked first.
 *
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const guardedPackages = {
	mathjs: [`${engine}/solver/math.ts`, `${engine}/quantity/arithmetic-mathjs.ts`]
};

/**
 * Says what is wrong with an import, or undefined when it may stand.
 *
 * @param {string} file path from the top of the project, with `/`
 * @param {string} specifier as written in the import
 * @returns {string | undefined}
 */
export function importFault(file, specifier) {
	const from = folderOf(file);
	const layer = from && layers[from];
	if (!layer) return `${file} is in no layer: add its folder to .config/layers.js`;
	const target = targetOf(file, specifier);
	if (!target) return packageFault(file, layer, packageOf(specifier));
	const to = folderOf(target);
	const allowed = to && (to === from || layer.imports.some((folder) => holds(folder, to)));
	return allowed ? undefined : `${from} may not import ${target}`;
}

/** @param {string} file @param {Layer} layer @param {string} name */
function packageFault(file, layer, name) {
	const guards = guardedPackages[name];
	if (guards && !guards.includes(file)) return `only ${guards.join(' and ')} may import ${name}`;
	if (layer.packages?.includes(name) ?? true) return undefined;
	return `${folderOf(file)} may not import the package ${name}`;
}

/**
 * The deepest listed folder that holds a file.
 *
 * @param {string} file
 */
function folderOf(file) {
	const holders = Object.entries(layers).filter(([folder, { flat }]) =>
		flat ? posix.dirname(file) === folder : holds(folder, file)
	);
	return holders.map(([folder]) => folder).sort((a, b) => b.length - a.length)[0];
}

/** @param {string} folder @param {string} path */
function holds(folder, path) {
	return path === folder || path.startsWith(`${folder}/`);
}

/**
 * The project path that a specifier means; undefined for a package.
 *
 * @param {string} file @param {string} specifier
 */
function targetOf(file, specifier) {
	const path = specifier.replace(/\?.*$/, '');
	if (path.startsWith('.')) return posix.join(posix.dirname(file), path);
	if (path.startsWith('/')) return path.slice(1);
	if (path === '$lib' || path.startsWith('$lib/')) return path.replace('$lib', 'src/lib');
	return undefined;
}

/** @param {string} specifier */
function packageOf(specifier) {
	const parts = specifier.split('/');
	return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : /** @type {string} */ (parts[0]);
}
