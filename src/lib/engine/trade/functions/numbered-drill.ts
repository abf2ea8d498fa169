import { numberDrill } from '../../quantity/drills.ts';
import { TradeError, type TradeFunction } from '../../solver/trade-function.ts';
import { named } from '../shown.ts';

/** Size of the number drill with this number, No. 1 to No. 60. */
export const numberedDrill: TradeFunction = {
	takes: ['number'],
	gives: 'length',
	run: (number: number) => {
		const size = numberDrill(number);
		if (size) return size.valueOf();
		throw new TradeError(`There is no number drill ${number}.`);
	},
	show: named('size of No.')
};

/** A number of two digits with the digits exchanged: 21 for 12. */
export const exchangedDigits: TradeFunction = {
	takes: ['number'],
	gives: 'number',
	run: (number: number) => {
		if (number < 10) throw new TradeError(`${number} has one digit.`);
		return (number % 10) * 10 + Math.floor(number / 10);
	},
	show: named('digits exchanged of')
};
