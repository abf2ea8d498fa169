import { exactly } from '../../quantity/exact.ts';
import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { named } from '../shown.ts';

/** The finest mark of a rule, in parts of an inch. */
const finest = 64n;

/** The top number of a size as it is written on a rule: 3 for 3/8 in. None has an inch or more. */
export const topNumber: TradeFunction = {
	takes: ['length'],
	gives: 'number',
	run: (size: number) => {
		const { n, d } = exactly(size);
		if (size >= 1 || finest % d !== 0n) throw new TradeError('That size is not one fraction.');
		return Number(n);
	},
	show: named('top number of')
};
