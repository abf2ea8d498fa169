import type { Part, TradeFunction } from '../../solver/trade-function.ts';
import * as code from '../rivet-code.ts';
import { named, text } from '../shown.ts';

const apart = '<mspace width="0.5em"/>';

/** A rivet number's parts behind its standard, a little apart so that each can be read. */
function numberWith(standard: string) {
	return ([head = [], letters = [], diameter = [], length = []]: readonly (readonly Part[])[]) => [
		text(standard),
		apart,
		...head,
		apart,
		...letters,
		apart,
		...diameter,
		'<mo>-</mo>',
		...length
	];
}

function madeWith(standard: string, run: typeof code.rivetNumber): TradeFunction {
	return {
		takes: ['number', 'text', 'number', 'number'],
		gives: 'text',
		run,
		show: numberWith(standard)
	};
}

export const rivetNumber = madeWith('MS20', code.rivetNumber);
export const olderRivetNumber = madeWith('AN', code.olderRivetNumber);

type Parts = ReturnType<typeof code.rivetNumberParts>;

function partOf(part: keyof Parts, gives: string, shown: string): TradeFunction {
	return {
		takes: ['text'],
		gives,
		run: (number: string) => code.rivetNumberParts(number)[part],
		show: named(shown)
	};
}

export const headIn = partOf('head', 'text', 'head in');
export const alloyIn = partOf('alloy', 'text', 'alloy by the letters in');
export const dashAfterLetters = partOf('diameterDash', 'number', 'number after the letters in');
export const dashAtEnd = partOf('lengthDash', 'number', 'number after the dash in');
