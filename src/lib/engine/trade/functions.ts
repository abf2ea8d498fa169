import type { TradeFunction } from '../solver/trade-function.ts';
import type { LookUp } from './table/look-up.ts';
import { type Misreading, misreadAs, misreadingsOf, misreadName } from './table/misread-as.ts';

/*
 * Every function that a formula of a method may call, gathered for the build and for tests. What
 * ships is not this: each method imports the functions that it calls, and their tables.
 *
 * A function is called by the name it is exported under, in `functions/` or `tables/`; a look-up
 * may also be called misread, as in `finalDrillAbove`.
 */

const files = import.meta.glob<Readonly<Record<string, unknown>>>(
	['./functions/*.ts', './tables/*.ts', '!./tables/index.ts'],
	{ eager: true }
);

/** Where a function stands, for the code that a build writes. */
export interface FunctionPlace {
	/** The file, from this folder: `./tables/rivet-drills.ts`. */
	readonly file: string;
	/** What to import from it. */
	readonly exported: string;
	/** How that look-up is misread; null for the function as it is. */
	readonly misread: Misreading | null;
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
	gathered.map(({ name, file, exported, misread }) => [name, { file, exported, misread }])
);

function placed(file: string, exported: string, value: TradeFunction | LookUp): Placed[] {
	const own = { file, exported, misread: null, name: exported, run: value };
	if (!('find' in value)) return [own];
	if (value.name !== exported) throw new Error(`${file}: export ${value.name} under its name`);
	const misread = misreadingsOf(value).map((misreading) => ({
		file,
		exported,
		misread: misreading,
		name: misreadName(exported, misreading),
		run: misreadAs(value, misreading)
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
	if (wanted.some(({ misread }) => misread)) {
		imports.push(`import { misreadAs as f_misread } from '${folder}/table/misread-as.ts';`);
	}
	const members = wanted.map(({ name, exported, misread }) =>
		misread ? `${name}: f_misread(f_${exported}, '${misread}')` : `${name}: f_${exported}`
	);
	return [...imports, `const f = {${members.join(', ')}};`].join('\n');
}
