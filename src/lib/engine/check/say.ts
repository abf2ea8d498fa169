import { capital, decapital } from '../quantity/capital.ts';
import { decimalText, exactly } from '../quantity/exact.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import type { LengthUnit } from '../quantity/value.ts';
import { unitLimit } from '../solver/limits.ts';
import { symbolOf } from '../solver/show-step.ts';
import type { Checkup, Told } from './check.ts';

/** A size in times of another: `2.32D`. */
export function timesOf({ check, items }: Checkup, told: Told, size: number): string | null {
	const key = check.times;
	const one = key === null ? undefined : items[0]?.[key];
	if (key === null || typeof one !== 'number' || told.kind.dimension.name !== 'length') return null;
	return `${decimalText(exactly(size / one), 0, 2)}${symbolOf(check, key)}`;
}

/** Whether a limit is a number that was entered, and no rule’s. */
export function isEntered({ check, items }: Checkup, { limit, bound }: Told): boolean {
	const names = Object.keys(unitLimit(limit.from).bound.needs);
	const [name = ''] = names;
	return names.length === 1 && Object.hasOwn(check.of.given, name) && items[0]?.[name] === bound;
}

/** A limit in a sentence: `2D`, `0.750 in`, or of one that was entered `the given 0.750 in`. */
function limitIn(checkup: Checkup, told: Told): string {
	const size = lengthText(told.kind, told.bound, checkup.units);
	if (isEntered(checkup, told)) return `the given ${size}`;
	return timesOf(checkup, told, told.bound) ?? size;
}

/** Which one of several it is: `hole 8`; empty where there is only one. */
export function placeName({ check }: Checkup, { limit, place }: Told): string {
	return place === null ? '' : `${limit.each ?? check.each} ${place + 1}`;
}

/** What is looked at: `Edge distance, hole 8`. */
export function toldName(checkup: Checkup, told: Told): string {
	const place = placeName(checkup, told);
	return place === '' ? told.limit.what : `${told.limit.what}, ${place}`;
}

/**
 * A limit in one line: `Edge distance 0.290 in is 2.32D: above 2D by 0.040 in`, or of several
 * `Hole 8: edge distance 0.251 in is 2.01D, above 2D by 0.001 in`.
 */
export function sayTold(checkup: Checkup, told: Told): string {
	const { limit, kind, value, gauged } = told;
	const limitText = limitIn(checkup, told);
	const place = placeName(checkup, told);
	const name = place === '' ? limit.what : `${capital(place)}: ${limit.what.toLowerCase()}`;
	if (gauged !== null)
		return `${name} ${gauged}, ${limit.least ? 'at least' : 'at most'} ${limitText}`;
	const seen = timesOf(checkup, told, value);
	const size = lengthText(kind, value, checkup.units) + (seen === null ? '' : ` is ${seen}`);
	return `${name} ${size}${place === '' ? ':' : ','} ${marginText(checkup, told, limitText)}`;
}

/** `above 2D by 0.040 in`. */
function marginText({ units }: Checkup, { limit, kind, margin }: Told, limitText: string): string {
	if (Math.abs(margin) < 5e-7) return `on ${limitText}`;
	const above = limit.least === margin > 0;
	return `${above ? 'above' : 'below'} ${limitText} by ${lengthText(kind, Math.abs(margin), units)}`;
}

/** A measured size in figures, so that it stands as the instrument shows it. */
export function lengthText(kind: Kind, value: number, units: LengthUnit): string {
	if (kind.dimension.name !== 'length') return kind.write(value, units);
	return units === 'mm'
		? `${decimalText(exactly(value * 25.4), 0, 2)} mm`
		: `${decimalText(exactly(value), 3, 4)} in`;
}

/** How many places hold, cannot be told and fail; a place counts by its worst limit. */
export function tally(checkup: Checkup): Readonly<Record<Told['verdict'], number>> {
	const byPlace = new Map<string, Told['verdict']>();
	for (const told of checkup.limits) {
		const key = placeName(checkup, told) || told.limit.what;
		byPlace.set(key, worseOf(told.verdict, byPlace.get(key) ?? 'holds'));
	}
	const counts = { holds: 0, undecided: 0, fails: 0 };
	for (const verdict of byPlace.values()) counts[verdict] += 1;
	return counts;
}

const order: readonly Told['verdict'][] = ['holds', 'undecided', 'fails'];

export function worseOf(one: Told['verdict'], other: Told['verdict']): Told['verdict'] {
	return order.indexOf(one) > order.indexOf(other) ? one : other;
}

/** `1 of 12 fails, 2 undecided, 9 hold.`, or of a part that is not all measured `2 of 12 holes …` */
export function sayTally(checkup: Checkup): string {
	const { soFar, verdict, check } = checkup;
	if (soFar === null) return sayAll(checkup);
	const are = soFar.here === 1 ? 'is' : 'are';
	const entered = `${soFar.here} of ${soFar.of} ${check.each}s ${are} in`;
	if (checkup.limits.length === 0) return `${entered}.`;
	if (verdict !== 'holds') return `${entered}. So far: ${decapital(sayAll(checkup))}`;
	const hold = soFar.here === 1 ? 'it holds' : soFar.here === 2 ? 'both hold' : 'all hold';
	return `${entered}, and ${hold} so far.`;
}

function sayAll(checkup: Checkup): string {
	const { holds, undecided, fails } = tally(checkup);
	const all = holds + undecided + fails;
	if (all === 1)
		return { holds: 'It holds.', undecided: 'Undecided.', fails: 'It fails.' }[checkup.verdict];
	if (holds === all) return `All ${all} hold.`;
	const parts = [
		fails > 0 ? `${fails} of ${all} ${fails === 1 ? 'fails' : 'fail'}` : '',
		undecided > 0 ? `${undecided}${fails > 0 ? '' : ` of ${all}`} undecided` : '',
		holds > 0 ? `${holds} ${holds === 1 ? 'holds' : 'hold'}` : ''
	];
	return `${parts.filter(Boolean).join(', ')}.`;
}
