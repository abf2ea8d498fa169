import { alloyOf } from '../alloy.ts';
import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { drillName } from '../../quantity/drills.ts';
import { named } from '../shown.ts';

/** The annealed temper of an alloy: `2024-T3` → `2024-O`. */
export const annealed: TradeFunction = {
	takes: ['text'],
	gives: 'text',
	run: (alloy: string) => `${alloyOf(alloy)}-O`,
	show: named('annealed')
};

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

/** Name of the drill of a size, `No. 30`; nothing where no drill has it. */
export const drillOfSize: TradeFunction = {
	takes: ['length'],
	gives: 'text',
	run: (size: number) => (size > 0 && size <= 1 ? (drillName(size) ?? '') : ''),
	show: named('drill of')
};

/** The number in the name of a number drill. */
export const drillNumber: TradeFunction = {
	takes: ['text'],
	gives: 'number',
	run: (name: string) => {
		const number = /^No\. (\d{1,2})$/.exec(name)?.[1];
		if (number) return Number(number);
		throw new TradeError(`${name.slice(0, 20)} is no number drill.`);
	},
	show: named('number of')
};
