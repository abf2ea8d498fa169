import type { Method } from './method.ts';

/**
 * The method with only some of its steps, to be joined with others: what is not wanted of it is not
 * worked, asked or told there. Steps kept may not rest on steps left out.
 *
 * @param keys of the steps that stay
 */
export function only(method: Method, keys: readonly string[]): Method {
	const { steps, slips, outcomes } = method;
	const stays = (key: string) => keys.includes(key);
	return {
		...method,
		steps: Object.fromEntries(Object.entries(steps).filter(([key]) => stays(key))),
		slips: Object.fromEntries(Object.entries(slips).filter(([, { step }]) => stays(step))),
		outcomes: outcomes.filter(({ at }) => at.every(stays)),
		limits: [],
		inverses: {}
	};
}
