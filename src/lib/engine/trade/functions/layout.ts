import type { TradeFunction } from '../../solver/trade-function.ts';
import { joined, text } from '../shown.ts';

/** More holes than any row has; a count that was mistyped must not fill the memory. */
const most = 1000;

export const stepOff: TradeFunction = {
	takes: ['length', 'length', 'number'],
	gives: 'length[]',
	run: (start: number, pitch: number, count: number) => {
		const last = Math.min(Math.round(count), most);
		const holes: number[] = [];
		for (let i = 0; i < last; i++) holes.push(start + i * pitch);
		return holes;
	},
	show: ([start = [], pitch = []]) => [...start, text(', then every '), ...pitch]
};

/** From each hole of a row to the next, in the order given; one less than the holes. */
export const spacesBetween: TradeFunction = {
	takes: ['length[]'],
	gives: 'length[]',
	run: (holes: readonly number[]) => holes.slice(1).map((at, i) => at - (holes[i] ?? at)),
	show: (shown) => [text('the spaces between '), ...joined(',')(shown)]
};
