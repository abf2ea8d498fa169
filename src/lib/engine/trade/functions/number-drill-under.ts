import { numberDrill } from '../../quantity/drills.ts';
import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { named } from '../shown.ts';

/** Size of the largest number drill under a size by more than a thousandth; No. 60 is the last. */
export const numberDrillUnder: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: (size: number) => {
		for (let number = 1; number <= 60; number++) {
			const drill = numberDrill(number)?.valueOf() ?? 0;
			if (drill < size - 0.001) return drill;
		}
		throw new TradeError('No number drill is under that size.');
	},
	show: named('number drill under')
};
