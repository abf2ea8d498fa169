import type { TradeFunction } from '../solver/trade-function.ts';
import type { LookUp, Misreading } from './table/look-up.ts';
import { misreadName } from './table/misread.ts';

/*
 * Every function that a formula of a method may call, gathered for the build and for tests. What
 * ships is not this: each method imports the functions that it calls, and their tables.
 *
 * A function is called by the name it is exported under, in `functions/` or `tables/`; a look-up
 * may also be called misread, as in `finalDrillAbove`.
 */

const files = import.meta.glob<Readonly<Record<string, unknown>>>(
	['./functions/*.ts', './tables/*.ts'],
	{ eager: true }
);

/** Where a function stands, for the code that a build writes. */
export interface FunctionPlace {
	/** The file, from this folder: `./tables/rivet-drills.ts`. */
	readonly file: string;
	/** What to import from it. */
	readonly exported: string;
	/** The function in terms of that: `finalDrill.misreadings.above`. */
	readonly code: string;
}

interface Placed extends FunctionPlace {
	readonly name: string;
	readonly run: TradeFunction;
}

const gathered: readonly Placed[] = Object.entries(files).flatMap(([file, exports]) =>
	Object.entries(exports).flatMap(([exported, value]) =>
		isFunction(value) ? placed(file, exported, value) : []
	)
);

for (const { name, file } of gathered) {
	const other = gathered.find((one) => one.name === name && one.file !== file);
	if (other) throw new Error(`${file} and ${other.file} both export a function called ${name}`);
}

export const functions: Readonly<Record<string, TradeFunction>> = Object.fromEntries(
	gathered.map(({ name, run }) => [name, run])
);

export const functionPlaces: ReadonlyMap<string, FunctionPlace> = new Map(
	gathered.map(({ name, file, exported, code }) => [name, { file, exported, code }])
);

function placed(file: string, exported: string, value: TradeFunction | LookUp): Placed[] {
	const own = { file, exported, code: exported, name: exported, run: value };
	if (!('misreadings' in value)) return [own];
	if (value.name !== exported) throw new Error(`${file}: export ${value.name} under its name`);
	const misread = Object.entries(value.misreadings).map(([misreading, run]) => ({
		file,
		exported,
		code: `${exported}.misreadings.${misreading}`,
		name: misreadName(exported, misreading as Misreading),
		run
	}));
	return [own, ...misread];
}

function isFunction(value: unknown): value is TradeFunction | LookUp {
	return typeof value === 'object' && value !== null && 'takes' in value && 'run' in value;
}

/**
 * Code that brings in these functions as one object: imports, and `const f = { … }`.
 *
 * @param folder of this file, as the code is to name it
 * @throws Error when there is no function of a name
 */
export function importing(names: Iterable<string>, folder: string): string {
	const wanted = [...new Set(names)].sort().map((name) => {
		const place = functionPlaces.get(name);
		if (!place) throw new Error(`no trade function is called ${name}`);
		return { name, ...place };
	});
	const imports = [...new Set(wanted.map(({ file }) => file))].map((file) => {
		const own = wanted.filter((one) => one.file === file).map(({ exported }) => exported);
		const as = [...new Set(own)].map((one) => `${one} as f_${one}`);
		return `import { ${as.join(', ')} } from '${folder}/${file.slice(2)}';`;
	});
	const members = wanted.map(({ name, code }) => `${name}: f_${code}`);
	return [...imports, `const f = { ${members.join(', ')} };`].join('\n');
}
