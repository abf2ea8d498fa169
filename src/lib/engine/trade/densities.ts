import { TradeError } from '../solver/trade-function.ts';
import { source, type Source } from './source.ts';

const nominal = source('aluminum', 'table 4.3');

/** Nominal density of wrought aluminium alloys, pounds per cubic inch. */
export const densities: Readonly<Record<string, { density: number; source: Source }>> = {
	1100: { density: 0.098, source: nominal },
	2014: { density: 0.101, source: nominal },
	2024: { density: 0.1, source: nominal },
	3003: { density: 0.099, source: nominal },
	5052: { density: 0.097, source: nominal },
	6061: { density: 0.098, source: source('hdbk5', 'nominal value', 'memory') },
	7075: { density: 0.101, source: source('hdbk5', 'nominal value', 'memory') }
};

/** Density in lb/in³ of an alloy; the temper, as in `2024-T3`, makes no difference. */
export function densityOf(alloy: string): number {
	const base = alloy.trim().split('-')[0] ?? '';
	const entry = Object.hasOwn(densities, base) ? densities[base] : undefined;
	if (entry) return entry.density;
	throw new TradeError(
		`No density is listed for ${alloy.slice(0, 20)}; there is one for ${Object.keys(densities).join(', ')}.`
	);
}
