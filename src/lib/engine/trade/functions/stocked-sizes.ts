import type { TradeFunction } from '../../solver/trade-function.ts';
import { text } from '../shown.ts';
import { downTo, upTo } from './rounding.ts';

/** What the bins step by, in inches: over 3/16 in by 1/16, so that they hold no 7/32 in. */
const stepAt = (size: number) => (size > 3 / 16 + 1e-9 ? 1 / 16 : 1 / 32);

/** The next stocked rivet diameter, 3/32 in at least: FAA-H-8083-31B, ch. 4, p. 4-32. */
export const stockedUp: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: (size: number) => Math.max(upTo.run(size, stepAt(size)), 3 / 32),
	show: ([size = []]) => [...size, '<mo>→</mo>', text('next stocked size up')]
};

/** The stocked rivet diameter at or below a size. */
export const stockedDown: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: (size: number) => downTo.run(size, stepAt(size)),
	show: ([size = []]) => [...size, '<mo>→</mo>', text('next stocked size down')]
};
