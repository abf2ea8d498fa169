import type { TradeFunction } from '../../solver/trade-function.ts';
import { joined, text, wordsAround } from '../shown.ts';

export const sum: TradeFunction = {
	takes: ['a[]'],
	gives: 'a',
	run: (list: readonly number[]) => list.reduce((total, one) => total + one, 0),
	show: joined('+')
};

export const max: TradeFunction = {
	takes: ['a', 'a...'],
	gives: 'a',
	run: (...values: number[]) => Math.max(...values),
	show: wordsAround('the larger of ', ' and ')
};

export const abs: TradeFunction = {
	takes: ['a'],
	gives: 'a',
	run: (value: number) => Math.abs(value),
	show: ([value = []]) => ['<mo>|</mo>', ...value, '<mo>|</mo>']
};

export const largest: TradeFunction = {
	takes: ['a[]'],
	gives: 'a',
	run: (list: readonly number[]) => Math.max(...list),
	show: (shown) => [text('the largest of '), ...joined(',')(shown)]
};

export const smallest: TradeFunction = {
	takes: ['a[]'],
	gives: 'a',
	run: (list: readonly number[]) => Math.min(...list),
	show: (shown) => [text('the smallest of '), ...joined(',')(shown)]
};

export const howMany: TradeFunction = {
	takes: ['a[]'],
	gives: 'number',
	run: (list: readonly number[]) => list.length,
	show: (shown) => [text('how many: '), ...joined(',')(shown)]
};

export const forEach: TradeFunction = {
	takes: ['a', 'b[]'],
	gives: 'a[]',
	run: (value: number, list: readonly number[]) => list.map(() => value),
	show: ([value = []]) => [...value, text(' for each')]
};
