import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { named } from '../shown.ts';
import { sheetThicknesses } from '../stock.ts';

const slack = 1e-9;

/** The next thicker stocked sheet. */
export const gaugeAbove: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: (thickness: number) => stocked(sheetThicknesses.find((one) => one > thickness + slack)),
	show: named('next thicker sheet')
};

/** The next thinner stocked sheet. */
export const gaugeBelow: TradeFunction = {
	takes: ['length'],
	gives: 'length',
	run: (thickness: number) =>
		stocked(sheetThicknesses.filter((one) => one < thickness - slack).at(-1)),
	show: named('next thinner sheet')
};

function stocked(thickness: number | undefined): number {
	if (thickness === undefined) throw new TradeError('No stocked sheet lies beyond this one.');
	return thickness;
}
