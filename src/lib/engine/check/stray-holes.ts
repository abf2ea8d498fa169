import type { Checkup, Told } from './check.ts';
import { lengthText } from './say.ts';

/** A hole of a row that stands out of place: the spaces on both sides of it come out right together. */
export interface StrayHole {
	/** The space that is too wide. */
	readonly told: Told;
	/** Number of the hole, from 1. */
	readonly hole: number;
	/** What to do about it. */
	readonly next: string;
}

/** What a hole is told to be off by is rounded to this, in inches: it is read off two spaces. */
const rough = 0.005;

/**
 * Holes that stand out of place. A space that is too wide beside one that is as much too narrow is
 * one hole, and no space too few.
 */
export function strayHoles({ limits, units }: Checkup): StrayHole[] {
	const tooWide = limits.filter(
		({ limit, verdict }) => limit.each === 'space' && !limit.least && verdict === 'fails'
	);
	return tooWide.flatMap((told) => {
		const spaces = limits.filter(({ limit }) => limit === told.limit);
		const usual = median(spaces.map(({ value }) => value));
		const place = told.place ?? 0;
		const over = told.value - usual;
		const beside = [place - 1, place + 1].flatMap((at) => {
			const value = spaces[at]?.value;
			if (value === undefined) return [];
			const isAlike = Math.abs(usual - value - over) <= over / 2;
			return isAlike && told.value + value <= 2 * told.bound + 1e-9 ? [{ at, value }] : [];
		});
		const [narrow] = beside.sort((a, b) => a.value - b.value);
		if (!narrow) return [];
		// Hole n stands between space n - 1 and space n.
		const hole = Math.max(place, narrow.at) + 1;
		const off = Math.round((told.value - narrow.value) / 2 / rough) * rough;
		const [first, second] = [place, narrow.at].sort((a, b) => a - b).map((at) => at + 1);
		const way = narrow.at > place ? 'too far from' : 'too near to';
		const next = `Hole ${hole} stands about ${lengthText(told.kind, off, units)} ${way} the reference edge: spaces ${first} and ${second} come out right together, so no space is missing. Leave the hole, and ask.`;
		return [{ told, hole, next }];
	});
}

function median(all: readonly number[]): number {
	const sorted = [...all].sort((a, b) => a - b);
	return sorted[Math.floor((sorted.length - 1) / 2)] ?? NaN;
}
