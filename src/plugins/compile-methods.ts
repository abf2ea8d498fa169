import { readdirSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';
import { type Compiled, compileMethod, compilePiece } from '../lib/engine/solver/compile.ts';
import type { Functions } from '../lib/engine/solver/term.ts';
import type { Method } from '../lib/engine/solver/method.ts';
import type { Piece } from '../lib/engine/solver/write.ts';
import { firstPart, type Written } from './first-part.ts';

/** What the build reads from `trade/functions.ts`. */
interface Trade {
	readonly functions: Functions;
	readonly importing: (names: Iterable<string>, folder: string) => string;
}

/** What the build reads from `quantity/kinds/all.ts`. */
interface Kinds {
	readonly plainKinds: readonly {
		readonly id: string;
		readonly dimension: { readonly name: string };
	}[];
}

/** A method or a piece of a file, compiled. */
interface Unit extends Compiled {
	readonly id: string;
	/** The name it is exported under. */
	readonly name: string;
	/** Its file in `methods/`, without `.ts`. */
	readonly file: string;
}

type Exports = Readonly<Record<string, unknown>>;

const engine = resolve(import.meta.dirname, '../lib/engine');
const methodFile = /\/engine\/methods\/((?:pieces\/|checks\/)?[\w-]+)\.ts$/;

/** Behind the name of a method's file: what it tells of answers, which pages fetch later. */
const toldQuery = 'told';

/**
 * Compiles the formulas of every method, piece and check in `engine/methods/` as its file is built: their text is
 * read and checked here, and what ships is plain functions. A formula that cannot be read, or
 * whose dimensions do not agree, fails the build.
 *
 * For pages a file is built twice: without what it tells of answers, and as `<file>?told`, which
 * brings that. Checks, which are loaded by themselves, and everywhere else it is whole.
 */
export function compileMethods(): Plugin {
	let trade: Promise<Trade> | undefined;
	let kinds: Promise<Kinds> | undefined;
	const exportsIn = readTogether();
	let isBuild = false;
	return {
		name: 'compile-methods',
		enforce: 'pre',
		configResolved({ command }) {
			isBuild = command === 'build';
		},
		async transform(code, id) {
			const [path = id, query] = id.split('?');
			const file = methodFile.exec(path)?.[1];
			if (file === undefined) return null;
			const isPage = isBuild && this.environment.name === 'client' && !file.startsWith('checks/');
			if (query === toldQuery && !isPage) return '';
			trade ??= exportsOf<Trade>(`${engine}/trade/functions.ts`);
			kinds ??= exportsOf<Kinds>(`${engine}/quantity/kinds/all.ts`);
			const [exported, { functions, importing }, { plainKinds }] = await Promise.all([
				exportsIn(path),
				trade,
				kinds
			]);
			const units = Object.entries(exported).flatMap((one) =>
				compiledUnit(one, functions).map((made) => ({ ...made, file }))
			);
			const f = (source: (unit: Unit) => string) =>
				importing(called(units.map(source)), `${engine}/trade`);
			const joined = (...lines: string[]) => withImports(lines.join('\n'), plainKinds);
			if (query === toldQuery) return joined(f(told), code, ...units.map(addsTold));
			const compiled = [f(unit), ...units.map(addsUnit)];
			if (isPage) {
				const first = firstPart(code, writtenIn(exported), `${engine}/solver/later.ts`);
				return joined(...compiled, first);
			}
			const all = f((one) => unit(one) + told(one));
			return joined(all, ...units.map(addsUnit), code, ...units.map(addsTold));
		}
	};
}

/** Code with the imports that added lines need, those of the kinds among them that no formula names. */
function withImports(code: string, plainKinds: Kinds['plainKinds']) {
	const imports = [
		`import { addCompiled } from '${engine}/solver/compiled.ts';`,
		`import { addTold } from '${engine}/solver/told.ts';`,
		`import { toldBy } from '${engine}/solver/told-by.ts';`
	];
	const needed = imports.filter((line) => code.includes(`${/\{ (\w+)/.exec(line)?.[1] ?? ''}(`));
	const kinds = plainKinds
		.filter(({ dimension }) => code.includes(`dimension: '${dimension.name}'`))
		.map(({ id }) => `import '${engine}/quantity/kinds/${id}.ts';`);
	return { code: [...needed, ...kinds, code].join('\n'), map: null };
}

/** The line that hands a method or a piece its compiled formulas. */
function addsUnit({ id, file, unit: source }: Unit): string {
	const where = file === id ? '' : `, ${JSON.stringify(file)}`;
	return `addCompiled(${JSON.stringify(id)}, ${source}${where});`;
}

/** The line that hands it what it tells. */
function addsTold({ id, name, told: source }: Unit): string {
	return `addTold(${JSON.stringify(id)}, toldBy(${name}, ${source}));`;
}

const unit = (one: Unit) => one.unit;
const told = (one: Unit) => one.told;

async function exportsOf<Module extends object>(path: string): Promise<Module> {
	const { module } = await runnerImport<Module>(path, { configFile: false });
	return module;
}

/**
 * What a file in `methods/` exports. All of them are read at once, since they share most of what they
 * import, and again when any of them was written.
 */
function readTogether(): (path: string) => Promise<Exports> {
	let files: Promise<Record<string, Exports>> | undefined;
	let read = '';
	return async (path) => {
		const written = timesWritten();
		if (written !== read) files = undefined;
		read = written;
		files ??= methodFiles();
		return (await files)[path] ?? {};
	};
}

function timesWritten(): string {
	const folder = `${engine}/methods`;
	const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' });
	return paths.map((path) => `${path} ${statSync(`${folder}/${path}`).mtimeMs}`).join();
}

/** The exports of every file in `methods/`, by path. */
async function methodFiles(): Promise<Record<string, Exports>> {
	const path = `${engine}/method-files.ts`;
	const { files } = await exportsOf<{ readonly files: Record<string, Exports> }>(path);
	return Object.fromEntries(
		Object.entries(files).map(([from, exported]) => [resolve(engine, from), exported])
	);
}

/** Names of the trade functions that compiled formulas call. */
function called(compiled: readonly string[]): string[] {
	return compiled.flatMap((text) =>
		[...text.matchAll(/\bf\.(\w+)\.run\(/g)].map(([, name = '']) => name)
	);
}

/** A method or a piece compiled; nothing for anything else that a file exports. */
function compiledUnit(
	[name, value]: [string, unknown],
	functions: Functions
): Omit<Unit, 'file'>[] {
	if (isMethod(value)) return [{ id: value.id, name, ...compileMethod(value, functions) }];
	if (isPiece(value)) {
		return [{ id: `piece/${value.piece}`, name, ...compilePiece(value, functions) }];
	}
	return [];
}

function writtenIn(exported: Exports): Written {
	const values = Object.values(exported);
	return { methods: values.filter(isMethod), pieces: values.filter(isPiece) };
}

function isMethod(value: unknown): value is Method {
	return typeof value === 'object' && value !== null && 'steps' in value && 'slips' in value;
}

function isPiece(value: unknown): value is Piece {
	return typeof value === 'object' && value !== null && 'piece' in value && 'needs' in value;
}
