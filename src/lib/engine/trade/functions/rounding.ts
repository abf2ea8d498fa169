import type { TradeFunction } from '../../solver/trade-function.ts';
import { towards } from '../shown.ts';

/** Quotients within this of a whole number are that number: 0.125 + 0.1875 is 5/16 exactly. */
const slack = 1e-9;

export const upTo = {
	takes: ['a', 'a'],
	gives: 'a',
	run: (value: number, size: number) => Math.ceil(value / size - slack) * size,
	show: towards('up')
} satisfies TradeFunction;

export const downTo = {
	takes: ['a', 'a'],
	gives: 'a',
	run: (value: number, size: number) => Math.floor(value / size + slack) * size,
	show: towards('down')
} satisfies TradeFunction;

export const nearest: TradeFunction = {
	takes: ['a', 'a'],
	gives: 'a',
	run: (value: number, size: number) => Math.floor(value / size + 0.5 + slack) * size,
	show: towards('nearest')
};
