import { echoed, UsageError } from '../usage-error.ts';

/** `key=value` arguments as a record; a key may stand only once. */
export function pairs(args: readonly string[]): Record<string, string> {
	const found: Record<string, string> = {};
	for (const arg of args) {
		const at = arg.indexOf('=');
		if (at < 1) throw new UsageError(`Write ${echoed(arg) || 'every value'} as key=value.`);
		const key = arg.slice(0, at);
		if (Object.hasOwn(found, key))
			throw new UsageError(`${echoed(key)} stands twice; give it once.`);
		found[key] = arg.slice(at + 1);
	}
	return found;
}
