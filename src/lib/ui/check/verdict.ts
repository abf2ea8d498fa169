import { capital, decapital } from '$lib/engine/quantity/capital.ts';
import type { Checkup, Told } from '$lib/engine/check/check.ts';
import { namesOf, type Spot, spotsOf, boundText } from '$lib/engine/check/drawings/spots.ts';
import { lengthText, sayTold, timesOf } from '$lib/engine/check/say.ts';
import { listed } from '../listed.ts';

/** The stamp over the whole part. */
export const stampWords: Readonly<Record<Told['verdict'], string>> = {
	holds: 'ACCEPT',
	undecided: 'UNDECIDED',
	fails: 'REWORK'
};

/** Whether the part as a whole is judged: one limit that fails is enough for that, else all of it. */
export function isStamped({ soFar, verdict }: Checkup): boolean {
	return soFar === null || verdict === 'fails';
}

/** What was left out, in the words of the fields: `Rivet diameter and head were left out`. */
export function leftOut({ check, items }: Checkup): string {
	const [values = {}] = items;
	const keys = check.optional.filter((key) => values[key] === undefined);
	const names = listed(keys.map((key) => decapital(check.given[key]?.label ?? key)));
	return `${capital(names)} ${keys.length === 1 ? 'was' : 'were'} left out`;
}

/** A row of the table of readings. */
export interface Reading {
	readonly name: string;
	readonly size: string;
	/** In times of the rivet diameter; empty where it goes by none. */
	readonly times: string;
	/** The margin to the nearer limit, with its sign. */
	readonly margin: string;
	/** That limit. */
	readonly limit: string;
	readonly verdict: Told['verdict'];
	/** Whether it is the mean of several readings. */
	readonly mean: boolean;
}

/** The readings by what is looked at. */
export function readingsOf(checkup: Checkup): { what: string; rows: Reading[] }[] {
	return namesOf(checkup).map((what) => ({
		what,
		rows: spotsOf(checkup, what).map((spot, i) => readingOf(checkup, spot, i))
	}));
}

function readingOf(checkup: Checkup, spot: Spot, place: number): Reading {
	const near = nearer(spot);
	if (!near) throw new Error('a reading without a limit');
	const { units } = checkup;
	const [feature] = checkup.measured.flatMap(({ key, features }) =>
		key === 'measured' || checkup.measured.length === 1 ? [features[place]] : []
	);
	const sign = near.margin < 0 ? '−' : '+';
	return {
		name: spot.name,
		size: near.gauged ?? lengthText(near.kind, spot.value, units),
		times: near.gauged === null ? (timesOf(checkup, near, spot.value) ?? '') : '',
		margin:
			near.gauged === null ? `${sign}${lengthText(near.kind, Math.abs(near.margin), units)}` : '',
		limit: `to ${boundText(checkup, near)}`,
		verdict: spot.verdict,
		mean: (feature?.readings.length ?? 0) > 1
	};
}

/** The limit that decides: the one broken, or with the least room. */
function nearer({ least, most, verdict }: Spot): Told | null {
	const both = [least, most].filter((told) => told !== null);
	const own = both.filter((told) => told.verdict === verdict);
	return own.sort((a, b) => a.margin - b.margin)[0] ?? both[0] ?? null;
}

/** What fails in one sentence each, as far as there is room for it. */
export function failingLines(checkup: Checkup, most = 3): string[] {
	const failing = checkup.limits.filter(({ verdict }) => verdict === 'fails');
	const lines = failing
		.slice(0, most)
		.map((told) => `${sayTold(checkup, told)}. ${told.limit.says}`);
	return failing.length > most ? [...lines, `And ${failing.length - most} more.`] : lines;
}

/** The readings of features that were measured several times. */
export function repeatsOf({ check, measured, units }: Checkup): string[] {
	return measured.flatMap(({ key, features }) =>
		features.flatMap(({ readings, spread }, i) => {
			const kind = check.given[key]?.kind.member;
			if (!kind || readings.length < 2) return [];
			const sizes = readings.map((one) => lengthText(kind, one, units)).join(', ');
			return [
				`${capital(check.each)} ${i + 1} is the mean of ${readings.length}: ${sizes}; spread ${lengthText(kind, spread, units)}.`
			];
		})
	);
}
