import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseAst, type Plugin } from 'vite';
import { edited, type Edit, type Node, propertiesIn } from './syntax.ts';

const engine = resolve(import.meta.dirname, '../lib/engine');

/** The list of kinds, a line each, as `export { length } from './kinds/length.ts'`. */
const list = `${engine}/quantity/kinds.ts`;

/** Where functions say what they look like in a formula, which only the compiler asks. */
const drawnInFormulas = /\/engine\/trade\/(?:functions|table)\/[\w-]+\.ts$/;

/** Tolerances, whose reasons are told once an answer is right. */
const tolerances = `${engine}/trade/tolerances.ts`;

/**
 * SvelteKit's start takes two functions out of all that Svelte has, whereby all of it would be kept.
 * Taken by name, the rest is left out.
 */
const kitStart = /\/@sveltejs\/kit\/src\/runtime\/client\/client\.js$/;

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
			if (kitStart.test(path)) return { code: takenByName(code), map: null };
			if (!path.startsWith(engine)) return null;
			const direct = code.replace(
				/^import \{([^}]*)\} from '((?:\.\.?\/)+(?:quantity\/)?kinds\.ts)';$/gm,
				(whole, names: string, from: string) =>
					resolve(dirname(path), from) === list ? importsOf(names, places) : whole
			);
			return { code: lightened(direct, path, query), map: null };
		}
	};
}

/** `const { tick } = svelte;` as `const tick = svelte.tick;`. */
function takenByName(code: string): string {
	return code.replace(/^const \{ ([\w, ]+) \} = svelte;$/m, (_, names: string) =>
		names
			.split(', ')
			.map((name) => `const ${name} = svelte.${name};`)
			.join(' ')
	);
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
