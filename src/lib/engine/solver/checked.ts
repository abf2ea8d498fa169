import type { Given } from './given.ts';
import type { Limit, Method } from './method.ts';
import type { LimitText } from './write.ts';

/*
 * How a method is checked on a part: what is measured there, and the limits that it must keep. It
 * stands in a file of its own, so that practice does not load it.
 */

/** A limit as it is written in a check. */
export interface CheckText extends LimitText {
	/** What to do at the bench where it fails. */
	readonly next: string;
	/** The step of the method whose skill is behind it. */
	readonly behind: string;
	/** What one of several values is called where it is not what the check calls them: `space`. */
	readonly each?: string;
	/** What to do in place of `next` once all that is wanted is there: `Leave the holes, and ask.` */
	readonly whenDone?: string;
}

export type CheckLimit = CheckText & Limit;

/** A method with what is measured on the part; worked by the steps of the method it is `of`. */
export interface Checked extends Method {
	readonly of: Method;
	/** Keys of the givens that are read off the part, in the order they are asked for. */
	readonly measured: readonly string[];
	/** Keys of the givens that may be left out; limits that rest on them are then not looked at. */
	readonly optional: readonly string[];
	/** What one of several is called: `hole`. */
	readonly each: string;
	/** The step that says how many of them the part has, where the method tells. */
	readonly wanted: string | null;
	/** The given that sizes are told in times of: 2.3 D. */
	readonly times: string | null;
	/** What the part must keep to. */
	readonly keeps: readonly CheckLimit[];
	/** What no part can break: a reading that does is a slip of the hand. */
	readonly possible: readonly Limit[];
}

/** A limit with what to do where it fails: `keep(atLeast('measured', 'least', …), 'least', …)`. */
export function keep(
	limit: LimitText,
	behind: string,
	next: string,
	{ each, whenDone }: Pick<CheckText, 'each' | 'whenDone'> = {}
): CheckText {
	return {
		...limit,
		behind,
		next,
		...(each !== undefined && { each }),
		...(whenDone !== undefined && { whenDone })
	};
}

/**
 * The check of a method. What is `measured` may be a given of the method itself; a list there is
 * one value of the check, anything else is checked item by item.
 */
export function checked(
	of: Method,
	parts: {
		measured: Readonly<Record<string, Given>>;
		takes?: Readonly<Record<string, Given>>;
		optional?: readonly string[];
		each: string;
		wanted?: string;
		times?: string;
		keeps: readonly CheckText[];
		possible?: readonly LimitText[];
	}
): Checked {
	const { measured, takes = {}, optional = [], each, possible = [] } = parts;
	const { wanted = null, times = null } = parts;
	const id = `check/${of.id}`;
	const placed = <L extends LimitText>(limit: L, place: number) => ({
		...limit,
		from: { unit: id, key: String(place), names: {} }
	});
	const keeps = parts.keeps.map(placed);
	const others = possible.map((limit, i) => placed(limit, keeps.length + i));
	return {
		...of,
		id,
		of,
		given: { ...of.given, ...takes, ...measured },
		slips: {},
		outcomes: [],
		inverses: {},
		limits: [...keeps, ...others],
		measured: Object.keys(measured),
		optional,
		each,
		wanted,
		times,
		keeps,
		possible: others
	};
}
