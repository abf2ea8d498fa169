import type { TradeFunction } from '../../solver/trade-function.ts';
import { text } from '../shown.ts';

/** More holes than any row has; a count that was mistyped must not fill the memory. */
const most = 1000;

export const stepOff: TradeFunction = {
	takes: ['length', 'length', 'number'],
	gives: 'length[]',
	run: (start: number, pitch: number, count: number) =>
		Array.from(
			{ length: Math.min(Math.max(0, Math.round(count)), most) },
			(_, i) => start + i * pitch
		),
	show: ([start = [], pitch = []]) => [...start, text(', then every '), ...pitch]
};
