import type { TradeFunction } from '../../solver/trade-function.ts';
import { alloyOf } from '../alloy.ts';
import { named } from '../shown.ts';

/** The annealed temper of an alloy: `2024-T3` → `2024-O`. */
export const annealed: TradeFunction = {
	takes: ['text'],
	gives: 'text',
	run: (alloy: string) => `${alloyOf(alloy)}-O`,
	show: named('annealed')
};

/** Softest first, of those in the table of minimum bend radii (Fig. 4-124) what a shop keeps: common practice. */
const tempers: Readonly<Record<string, readonly string[]>> = {
	'2024': ['O', 'T3', 'T6'],
	'5052': ['O', 'H34'],
	'6061': ['O', 'T6'],
	'7075': ['O', 'T6']
};

/** The same alloy in the next harder temper of the shop: `2024-O` → `2024-T3`. None is harder than the last. */
export const harder: TradeFunction = {
	takes: ['text'],
	gives: 'text',
	run: (named: string) => {
		const alloy = alloyOf(named);
		const [soft = '', ...hard] = tempers[alloy] ?? [];
		const next = hard[named.endsWith(`-${soft}`) ? 0 : hard.length - 1];
		return next === undefined ? named : `${alloy}-${next}`;
	},
	show: named('harder')
};
