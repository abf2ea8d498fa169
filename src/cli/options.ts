import { parseArgs } from 'node:util';
import { echoed, UsageError } from './usage-error.ts';

/** The options a command takes besides `--json` and `--help`. */
export interface Takes {
	/** `--answers`. */
	readonly flags?: readonly string[];
	/** Options that a value follows: `--out DIR`. */
	readonly values?: readonly string[];
	/** Options that words follow, up to the next option: `--own least=1/4 greatest=1/2`. */
	readonly rests?: readonly string[];
}

/** A command line taken apart. */
export interface Options {
	/** Whether an option stands there, with or without a value. */
	has(name: string): boolean;
	value(name: string): string | undefined;
	/** The words behind an option; none where it is not there. */
	rest(name: string): readonly string[];
}

export interface CommandLine {
	readonly words: readonly string[];
	readonly options: Options;
}

const always = ['--json', '--help'];

/**
 * Takes apart what stands after `bucktail`.
 *
 * @param name of the command, for messages
 * @throws UsageError
 */
export function readCommandLine(
	argv: readonly string[],
	name: string,
	{ flags = [], values = [], rests = [] }: Takes
): CommandLine {
	const known = Object.fromEntries([
		...[...flags, ...rests, ...always].map((flag) => [flag.slice(2), { type: 'boolean' }] as const),
		...values.map((option) => [option.slice(2), { type: 'string' }] as const)
	]);
	const { tokens } = parseArgs({
		args: [...argv],
		options: known,
		strict: false,
		allowPositionals: true,
		tokens: true
	});
	const words = new Map<number, string>();
	const found = new Map<string, string>();
	const behind = new Map<string, Map<number, string>>();
	let into = words;
	for (const token of tokens) {
		if (token.kind === 'positional') into.set(token.index, token.value);
		if (token.kind !== 'option') continue;
		// One hyphen starts a word here, such as a length below zero.
		if (!token.rawName.startsWith('--')) into.set(token.index, argv[token.index] ?? '');
		else {
			found.set(token.rawName, valueOf(token, name, { flags: [...flags, ...rests], values }));
			const own = behind.get(token.rawName) ?? new Map<number, string>();
			behind.set(token.rawName, own);
			into = rests.includes(token.rawName) ? own : words;
		}
	}
	return {
		words: [...words.values()],
		options: {
			has: (option) => found.has(option),
			value: (option) => found.get(option),
			rest: (option) => [...(behind.get(option)?.values() ?? [])]
		}
	};
}

function valueOf(
	{ rawName, value, inlineValue }: { rawName: string; value?: string; inlineValue?: boolean },
	name: string,
	{ flags = [], values = [] }: Takes
): string {
	if (values.includes(rawName)) {
		if (value !== undefined && (inlineValue || !value.startsWith('--'))) return value;
		throw new UsageError(`Give a value after ${rawName}.`);
	}
	if (![...flags, ...always].includes(rawName)) {
		throw new UsageError(`${name} takes no ${echoed(rawName)}; try bucktail help.`);
	}
	if (value !== undefined) throw new UsageError(`${rawName} takes no value; try bucktail help.`);
	return '';
}
