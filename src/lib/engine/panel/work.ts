import { drillName } from '../quantity/drills.ts';
import { exactly } from '../quantity/exact.ts';
import { TradeError } from '../solver/trade-function.ts';
import { cautions, trainingAid } from '../trade/cautions.ts';
import { canCountersink, thinnestCountersunk } from '../trade/countersinks.ts';
import type { Filled, FilledRow, Hole } from './holes.ts';
import type { PanelJob, Problem } from './job.ts';
import { drillsFor } from './rivets.ts';
import { gaugeText, inchesText } from './write.ts';

/*
 * What goes to the bench with the plan. Sheet holders and spares are common practice.
 */

export interface RivetCount {
	readonly number: string;
	readonly count: number;
	readonly spares: number;
}

export interface DrillUse {
	/** Rivet diameter. */
	readonly rivet: number;
	readonly pilot: number;
	readonly pilotName: string;
	readonly final: number;
	readonly finalName: string;
	readonly holes: number;
}

/** How the flush heads of a rivet size are let in. */
export interface Flush {
	readonly rivet: number;
	readonly way: 'countersink' | 'dimple' | 'ask';
	readonly says: string;
}

/** One rivet more for every ten. */
const sparesFor = (count: number) => Math.ceil(count / 10);

export function rivetCounts(holes: readonly Hole[]): RivetCount[] {
	const numbers = countBy(holes, ({ rivet }) => rivet.number);
	return [...numbers]
		.map(([number, count]) => ({ number, count, spares: sparesFor(count) }))
		.sort((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true }));
}

export function drillUses(holes: readonly Hole[], problems: Problem[]): DrillUse[] {
	const sizes = [...countBy(holes, ({ rivet }) => rivet.diameter)].sort(([a], [b]) => a - b);
	return sizes.flatMap(([rivet, count]) => {
		try {
			const { pilot, final } = drillsFor(rivet);
			const names = { pilotName: nameOf(pilot), finalName: nameOf(final) };
			return [{ rivet, pilot, final, ...names, holes: count }];
		} catch (error) {
			if (!(error instanceof TradeError)) throw error;
			const says = `Drills for ${inchesText(rivet)} rivets: ${error.message}`;
			problems.push({ field: 'rivet.diameter', says });
			return [];
		}
	});
}

function nameOf(size: number): string {
	const { d } = exactly(size);
	return 64n % d === 0n ? inchesText(size) : (drillName(size) ?? gaugeText(size));
}

export function flushHeads({ rivet, thickness }: PanelJob, holes: readonly Hole[]): Flush[] {
	if (rivet.head !== 'countersunk' || thickness === null) return [];
	const sizes = [...new Set(holes.map((one) => one.rivet.diameter))].sort((a, b) => a - b);
	return sizes.map((D) => {
		const least = thinnestCountersunk(D);
		const size = inchesText(D);
		if (least === null) {
			const says = `No table tells how thick a sheet must be for a countersunk ${size} rivet: ask.`;
			return { rivet: D, way: 'ask', says };
		}
		if (canCountersink(thickness, least)) {
			const says = `${size} rivets: countersink; ${gaugeText(thickness)} is not under ${gaugeText(least)}.`;
			return { rivet: D, way: 'countersink', says };
		}
		const says = `${size} rivets: dimple; ${gaugeText(thickness)} is under ${gaugeText(least)}, the thinnest for a countersink.`;
		return { rivet: D, way: 'dimple', says };
	});
}

/** Holes for sheet holders: the ends of every stretch and every fourth hole between. */
export function sheetHolders({ rows }: Filled): string[] {
	const held = rows.flatMap(({ stretches }) =>
		stretches.flatMap((one) => one.filter((_, i) => i % 4 === 0 || i === one.length - 1))
	);
	return [...new Set(held.map(({ id }) => id))];
}

/** Where each member is clamped before it is drilled. */
export function clamps(rows: readonly FilledRow[]): string[] {
	return rows.flatMap(({ row, stretches }) => {
		const holes = stretches.flat();
		const [first, last] = [holes[0], holes.at(-1)];
		if (row.lead || !first || !last) return [];
		return [`${row.name}: beside ${first.id}${last === first ? '' : ` and ${last.id}`}`];
	});
}

export function cautionsFor(job: PanelJob): string[] {
	return [
		cautions.drill,
		cautions.drive,
		cautions.edges,
		...(job.bends.length > 0 ? [cautions.bend] : []),
		trainingAid
	];
}

function countBy<T, K>(all: readonly T[], key: (one: T) => K): Map<K, number> {
	const counts = new Map<K, number>();
	for (const one of all) counts.set(key(one), (counts.get(key(one)) ?? 0) + 1);
	return counts;
}
