import type { Cutout, PanelJob } from './job.ts';

type Span = readonly [from: number, to: number];

/** Places looked at between two ends where a round opening lies. */
const places = 512;

/**
 * Square inches that openings take from a panel. Where two overlap, or one goes past an edge, each
 * piece of metal is missing once.
 */
export function openArea({ cutouts, length, width }: PanelJob): number {
	const ends = cutouts.flatMap((one) => {
		const [from, to] = acrossOf(one);
		return [clamped(from, length), clamped(to, length)];
	});
	const bounds = [...new Set(ends)].sort((a, b) => a - b);
	return bounds.slice(1).reduce((sum, to, i) => {
		const from = bounds[i] ?? to;
		const here = cutouts.filter((one) => reaches(one, (from + to) / 2));
		const open = (x: number) =>
			joined(
				here.map((one) => upOf(one, x)),
				width
			);
		return (
			sum + (here.some(({ round }) => round) ? curved(open, from, to) : straight(open, from, to))
		);
	}, 0);
}

function acrossOf(cutout: Cutout): Span {
	if (!cutout.round) return [cutout.x, cutout.x + cutout.length];
	return [cutout.x - cutout.diameter / 2, cutout.x + cutout.diameter / 2];
}

function reaches(cutout: Cutout, x: number): boolean {
	const [from, to] = acrossOf(cutout);
	return from < x && x < to;
}

/** What an opening takes up the panel's width at a place along its length. */
function upOf(cutout: Cutout, x: number): Span {
	if (!cutout.round) return [cutout.y, cutout.y + cutout.width];
	const half = Math.sqrt(Math.max((cutout.diameter / 2) ** 2 - (x - cutout.x) ** 2, 0));
	return [cutout.y - half, cutout.y + half];
}

/** How much of the width is open, where spans may overlap. */
function joined(spans: readonly Span[], width: number): number {
	let [sum, reached] = [0, 0];
	for (const [from, to] of [...spans].sort(([a], [b]) => a - b)) {
		const end = clamped(to, width);
		sum += Math.max(end - Math.max(clamped(from, width), reached), 0);
		reached = Math.max(reached, end);
	}
	return sum;
}

function straight(open: (x: number) => number, from: number, to: number): number {
	return open((from + to) / 2) * (to - from);
}

/**
 * Places lie as on a half circle over the length, so that a round opening comes out exactly; beside
 * the kink where two meet, to about a part in a million.
 */
function curved(open: (x: number) => number, from: number, to: number): number {
	const half = (to - from) / 2;
	let sum = 0;
	for (let i = 0; i < places; i++) {
		const angle = ((i + 0.5) * Math.PI) / places;
		sum += open(from + half - half * Math.cos(angle)) * Math.sin(angle);
	}
	return (sum * half * Math.PI) / places;
}

function clamped(place: number, most: number): number {
	return Math.min(Math.max(place, 0), most);
}
