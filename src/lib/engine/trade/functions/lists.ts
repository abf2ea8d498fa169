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

/** One member of a list, counted from 1; no number where the list has none there. */
export const member: TradeFunction = {
	takes: ['a[]', 'number'],
	gives: 'a',
	run: (list: readonly number[], place: number) => list[place - 1] ?? NaN,
	show: ([list = [], place = []]) => [...joined(',')([list]), text(', number '), ...place]
};

/** Members nearer than this are equal. */
const slack = 1e-9;

/** Where the largest member stands in a list, counted from 1; the first of equal ones. */
export const placeOfLargest: TradeFunction = {
	takes: ['a[]'],
	gives: 'number',
	run: (list: readonly number[]) => {
		const most = Math.max(...list);
		return list.findIndex((one) => one > most - slack) + 1;
	},
	show: (shown) => [text('place of the largest of '), ...joined(',')(shown)]
};

/** As many members as another list has: the last one is the value, the others are nothing. */
export const atLast: TradeFunction = {
	takes: ['a', 'b[]'],
	gives: 'a[]',
	run: (value: number, list: readonly number[]) =>
		list.map((_, i) => (i === list.length - 1 ? value : 0)),
	show: ([value = []]) => [...value, text(' at the last')]
};
