import type { TradeFunction } from '../../solver/trade-function.ts';
import * as bars from '../nose-bars.ts';
import { named } from '../shown.ts';

export const nextBar: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: bars.nextBar,
	show: named('nose bar of at least')
};

export const barUnder: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: bars.barUnder,
	show: named('nose bar under')
};
