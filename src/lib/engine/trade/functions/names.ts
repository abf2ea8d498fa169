import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { drillName } from '../../quantity/drills.ts';
import { named } from '../shown.ts';

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
