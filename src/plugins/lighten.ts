import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseAst, type Plugin } from 'vite';
import { lightClient } from './kit-client.ts';
import {
	callsIn,
	type Edit,
	edited,
	faultsIn,
	type Node,
	propertiesIn,
	propertyOf,
	replaced
} from './syntax.ts';

const engine = resolve(import.meta.dirname, '../lib/engine');

/** The list of kinds, a line each, as `export { length } from './kinds/length.ts'`. */
const list = `${engine}/quantity/kinds.ts`;

/** Where functions say what they look like in a formula, which only the compiler asks. */
const drawnInFormulas = /\/engine\/trade\/(?:functions|table)\/[\w-]+\.ts$/;

/** A family, whose file is built twice: as tasks are drawn, and as `<file>?metal`. */
const familyFile = /\/engine\/families\/(?!parts\/)[\w-]+\/(?!topic\.ts)[\w-]+\.ts$/;
const laterMetal = `${engine}/families/later-metal.ts`;

/** Where a kind takes what is asked of it once something was answered. */
const kindAnswers = /^import \{ (\w+Answers) \} from '\.\/answers\/[\w-]+\.ts';$/gm;
const laterAnswers = `${engine}/quantity/kinds/answers/later.ts`;

/** What draws tasks and joins methods. */
const inDrawing = /\/engine\/(?:solver\/join|tasks\/(?:chief-slips|task))\.ts$/;

/** Tolerances, whose reasons are told once an answer is right. */
const tolerances = `${engine}/trade/tolerances.ts`;

/**
 * SvelteKit's start takes two functions out of all that Svelte has, whereby all of it would be kept.
 * Taken by name, the rest is left out.
 */
const kitStart = /\/@sveltejs\/kit\/src\/runtime\/client\/client\.js$/;

/** Where SvelteKit and Svelte tell whoever writes pages of a mistake. */
const frameworkFaults =
	/\/(?:@sveltejs\/kit\/src\/(?:runtime\/app\/paths\/client|exports\/internal\/index)|svelte\/src\/internal\/(?:client|shared)\/errors)\.js$/;

/** What SvelteKit reads its routes with, and what stands in its place. */
const kitRoutes = /\/@sveltejs\/kit\/src\/utils\/routing\.js$/;
const ownRoutes = resolve(import.meta.dirname, 'kit-routes.js');

/** Fetching for pages that load data, of which there are none. */
const kitFetcher = /\/@sveltejs\/kit\/src\/runtime\/client\/fetcher\.js$/;

/** SvelteKit's root component as a class, and what makes it one in its place. */
const kitRoot = /\/generated\/root\.js$/;
const ownRoot = resolve(import.meta.dirname, 'root-component.svelte.ts');

/** Vite's helper around imports, and what stands in its place. */
const preloadHelper = '\0vite/preload-helper.js';
const ownHelper = resolve(import.meta.dirname, 'preload-helper.js');

/** What Svelte asks of itself for components of older versions and for `await` in them: there are none. */
const svelteRuntime = /\/svelte\/src\/internal\/client\/.*\.js$/;

/** What Svelte makes of a class: all of ours are words (tests/architecture/classes.test.ts). */
const svelteClasses = /\/svelte\/src\/internal\/shared\/attributes\.js$/;

/** The seeded generator, in the wrapping of CommonJS, which would bring its own helpers along. */
const generator = /\/seedrandom\/lib\/alea\.js$/;

/**
 * Leaves out of the pages what their build has used up, and lets each file load only the kinds it
 * names: through the list of kinds every page would load them all.
 */
export function lighten(): Plugin {
	const places = new Map<string, string>();
	return {
		name: 'lighten',
		enforce: 'pre',
		apply: 'build',
		buildStart() {
			for (const [, names = '', file = ''] of readFileSync(list, 'utf8').matchAll(
				/^export \{ (.*) \} from '(.*)';$/gm
			)) {
				for (const name of names.split(', ')) places.set(name, resolve(dirname(list), file));
			}
		},
		transform(code, id) {
			const [path = id, query] = id.split('?');
			if (this.environment.name !== 'client') return null;
			if (id === preloadHelper) return { code: readFileSync(ownHelper, 'utf8'), map: null };
			if (kitRoutes.test(path)) return { code: readFileSync(ownRoutes, 'utf8'), map: null };
			if (kitRoot.test(path))
				return { code: code.replace("'svelte/legacy'", JSON.stringify(ownRoot)), map: null };
			if (frameworkFaults.test(path)) return { code: withoutFaults(code, path), map: null };
			if (kitFetcher.test(path)) return { code, map: null, moduleSideEffects: false };
			if (kitStart.test(path)) return { code: takenByName(lightClient(code)), map: null };
			if (svelteClasses.test(path))
				return { code: code.replace('return _clsx(value)', 'return value'), map: null };
			if (svelteRuntime.test(path)) return { code: settled(code), map: null };
			if (generator.test(path)) return { code: unwrapped(code), map: null };
			if (!path.startsWith(engine) || !path.endsWith('.ts')) return null;
			const direct = code.replace(
				/^import \{([^}]*)\} from '((?:\.\.?\/)+(?:quantity\/)?kinds\.ts)';$/gm,
				(whole, names: string, from: string) =>
					resolve(dirname(path), from) === list ? importsOf(names, places) : whole
			);
			const part = familyFile.test(path) ? familyPart(direct, path, query) : kindPart(direct);
			return { code: lightened(part, path, query), map: null };
		}
	};
}

/**
 * `const { tick } = svelte;` as `const tick = svelte.tick;`, and nothing of addresses behind a `#`, of
 * such as lead elsewhere, or of data that is out of date.
 */
function takenByName(code: string): string {
	return code
		.replaceAll('app.hash', 'false')
		.replace(/\boptions\.invalidate(?:All)?\b/g, 'false')
		.replace(/await app\.hooks\.reroute\(\{[^]*?\n\t+\}\)/, 'undefined')
		.replace(/^const \{ ([\w, ]+) \} = svelte;$/m, (_, names: string) =>
			names
				.split(', ')
				.map((name) => `const ${name} = svelte.${name};`)
				.join(' ')
		);
}

/**
 * Calls that always answer the same, answered; written styles are read by what sets them alone. No
 * state is watched in depth (tests/architecture/state.test.ts), so nothing is made a proxy.
 */
function settled(code: string): string {
	return code
		.replace(/(?<!function )\bis_runes\(\)/g, 'true')
		.replace(/(?<!function )\bshould_defer_append\(\)/g, 'false')
		.replace('should_proxy ? proxy(value) : value', 'value')
		.replace('runes && bindable ? proxy(value) : value', 'value')
		.replace(/^import \{ to_style \} from '(.*)';$/m, "import { to_style } from '$1?style';");
}

/** A module in the wrapping of CommonJS and others, as a plain one. */
function unwrapped(code: string): string {
	const parts =
		/^\(function\(global, module, define\) \{$([^]*)^if \(module && module\.exports\)/m.exec(code);
	return parts ? `${parts[1]}\nexport default impl;` : code;
}

function importsOf(names: string, places: ReadonlyMap<string, string>): string {
	const wanted = names
		.split(',')
		.map((name) => name.trim())
		.filter(Boolean);
	return wanted
		.map(
			(name) =>
				`import { ${name} } from ${JSON.stringify(places.get(name.split(' ')[0] ?? '') ?? list)};`
		)
		.join(' ');
}

function lightened(code: string, path: string, query: string | undefined): string {
	return withoutFaults(withoutTold(code, path, query), path);
}

/**
 * A plain `Error` tells whoever writes a method or a family what is missing, and the tests see that
 * it is never thrown on a page: neither its words ship nor, where a task is drawn, the question
 * whether to throw it. One that is returned says why a task is drawn again, and its words do not ship
 * either. What a person is told has a class of its own.
 */
function withoutFaults(code: string, path: string): string {
	const { body } = parseAst(code, { lang: 'ts' }) as unknown as { body: Node[] };
	const { told, asked } = faultsIn(body);
	const edits = [
		...told.map((at): Edit => ({ at, text: 'Error()' })),
		...(inDrawing.test(path) ? asked.map((at): Edit => ({ at, text: ';' })) : [])
	];
	return replaced(code, edits);
}

function withoutTold(code: string, path: string, query: string | undefined): string {
	if (path === tolerances) return query === 'told' ? withReasons(code) : without(code, 'why', "''");
	return drawnInFormulas.test(path) ? without(code, 'show', '0') : code;
}

/** The code with every property of a name written in another way. */
function without(code: string, name: string, text: string): string {
	const { body } = parseAst(code, { lang: 'ts' }) as unknown as { body: Node[] };
	const edits = body
		.flatMap(propertiesIn)
		.flatMap(([key, at]): Edit[] =>
			key === name && at.type !== 'Identifier' ? [{ at, text }] : []
		);
	return edited(code, body, edits);
}

/** Tolerances that hand their reasons to those that were loaded without. */
function withReasons(code: string): string {
	const names = [...code.matchAll(/^export const (\w+)/gm)].map(([, name = '']) => name);
	const handed = names.map((name) => `Object.assign(first.${name}, ${name});`);
	return [`import * as first from ${JSON.stringify(tolerances)};`, code, ...handed].join('\n');
}

/** A kind without what it is asked once something was answered, which is fetched later; any other file as it is. */
function kindPart(code: string): string {
	return code.replace(
		kindAnswers,
		`import { laterAnswers } from ${JSON.stringify(laterAnswers)};\nconst $1 = laterAnswers('$1');`
	);
}

/** A family without what it draws of answers, which is fetched later, or that alone. */
function familyPart(code: string, path: string, query: string | undefined): string {
	const { body } = parseAst(code, { lang: 'ts' }) as unknown as { body: Node[] };
	for (const statement of body) {
		const written = callsIn(statement).find(({ name }) => name === 'family');
		const metal = propertyOf(written?.args[0], 'metal');
		if (!metal) continue;
		if (query === 'metal') {
			const text = `const drawn = ${code.slice(metal.start, metal.end)}; export { drawn as metal };`;
			return edited(code, body, [{ at: statement, text }]);
		}
		const text = `laterMetal(() => import(${JSON.stringify(`${path}?metal`)}))`;
		const first = edited(code, body, [{ at: metal, text }]);
		return `import { laterMetal } from ${JSON.stringify(laterMetal)};\n${first}`;
	}
	return code;
}
