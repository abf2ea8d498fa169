import type { Method } from './method.ts';

/** The displayed name of a given or a step: `D`, `grip`, `end margin`. */
export function symbolOf(method: Method, key: string): string {
	const symbol = method.given[key]?.symbol ?? method.steps[key]?.symbol;
	if (symbol) return symbol;
	return key.replace(/[A-Z]/g, (capital, at) => (at === 0 ? capital : ` ${capital.toLowerCase()}`));
}
