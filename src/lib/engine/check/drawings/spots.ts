import { decimalText, exactly } from '../../quantity/exact.ts';
import type { LengthUnit } from '../../quantity/value.ts';
import { circle, path, segment, type Shape, text, type Tone } from '../../figures/drawing.ts';
import type { Checkup, Told } from '../check.ts';
import { isEntered, timesOf, worseOf } from '../say.ts';

/** One measured thing on a drawing: how large it is, how it stands, and its limits. */
export interface Spot {
	/** Number or name under it. */
	readonly name: string;
	readonly value: number;
	readonly verdict: Told['verdict'];
	readonly least: Told | null;
	readonly most: Told | null;
}

const order: readonly Told['verdict'][] = ['holds', 'undecided', 'fails'];

/** What limits of one name say of every place. */
export function spotsOf({ limits }: Checkup, what: string): Spot[] {
	const own = limits.filter(({ limit }) => limit.what === what);
	const places = [...new Set(own.map(({ place }) => place))];
	return places.map((place) => {
		const here = own.filter((one) => one.place === place);
		const verdict = here.map((one) => one.verdict).reduce(worseOf, 'holds');
		const [first] = here;
		return {
			name: place === null ? '' : String(place + 1),
			value: first?.value ?? NaN,
			verdict,
			least: tightest(here, true),
			most: tightest(here, false)
		};
	});
}

/** How far a drawing must reach for it and its upper limit. */
export function reachOf({ value, most }: Spot): number {
	return Math.max(value, most?.bound ?? 0);
}

/** The limit that comes first from this side. */
function tightest(all: readonly Told[], least: boolean): Told | null {
	const own = all.filter(({ limit }) => limit.least === least);
	return own.sort((a, b) => a.margin - b.margin)[0] ?? null;
}

/** Names of what is looked at, in the order of the check. */
export function namesOf({ limits }: Checkup): string[] {
	return [...new Set(limits.map(({ limit }) => limit.what))];
}

/** A limit on a drawing: `2D`, or the size where it goes by no other, or was entered as one. */
export function boundText(checkup: Checkup, told: Told): string {
	if (isEntered(checkup, told)) return sizeText(told.bound, checkup.units);
	return timesOf(checkup, told, told.bound) ?? sizeText(told.bound, checkup.units);
}

/** A size as it is lettered: figures without the unit, which stands in the title block. */
export function sizeText(value: number, units: LengthUnit): string {
	return units === 'mm'
		? decimalText(exactly(value * 25.4), 1, 2)
		: decimalText(exactly(value), 3, 3);
}

export function toneOf(verdict: Told['verdict']): Tone {
	return verdict === 'fails' ? 'rework' : 'ink';
}

/** Open circle holds, half filled undecided, crossed fails. */
export function verdictMark(x: number, y: number, verdict: Told['verdict'], radius = 5): Shape[] {
	const rim = circle(x, y, radius, 'paper', verdict === 'fails' ? 'slip' : 'edge');
	if (verdict === 'holds') return [rim];
	if (verdict === 'undecided') {
		const half = `M${x} ${y - radius}A${radius} ${radius} 0 0 1 ${x} ${y + radius}Z`;
		return [rim, path(half, 'none', 'ink')];
	}
	const arm = radius * 0.7;
	return [
		rim,
		segment(x - arm, y - arm, x + arm, y + arm, 'slip'),
		segment(x - arm, y + arm, x + arm, y - arm, 'slip')
	];
}

/**
 * A small hole with its cross. The arms go out from the centre, each begun anew: one chain line across
 * so small a hole would end in a gap, on one side only.
 */
export function smallHole(x: number, y: number, radius: number): Shape[] {
	const arm = radius + 4;
	const ends = [
		[x - arm, y],
		[x + arm, y],
		[x, y - arm],
		[x, y + arm]
	] as const;
	return [
		circle(x, y, radius, 'paper', 'edge'),
		...ends.map(([toX, toY]) => segment(x, y, toX, toY, 'centre'))
	];
}

/** The three marks and what they mean. */
export function legend(x: number, y: number): Shape[] {
	let at = x;
	return order.flatMap((word) => {
		const from = at;
		at += 30 + word.length * 7.3;
		return [...verdictMark(from, y - 4, word), text(from + 10, y, word, { tone: 'soft' })];
	});
}
