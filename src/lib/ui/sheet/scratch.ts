import { decimalText, type Exact } from '$lib/engine/quantity/exact.ts';
import { length, number } from '$lib/engine/quantity/kinds.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';

/** A line of scratch arithmetic: as typed, what it comes to, and why where it comes to nothing. */
export interface ScratchLine {
	readonly typed: string;
	readonly result: string;
	/** One sentence, or empty. */
	readonly problem: string;
}

/** Works a line as answers are worked: plain numbers, or a length where units stand in it. */
export async function workScratch(typed: string, units: LengthUnit): Promise<ScratchLine> {
	// On a calculator a line ends with =.
	const sum = typed.replace(/\s*=\s*$/, '');
	if (/[-+*/×÷−–]\s*$/.test(sum))
		return { typed, result: '', problem: 'Write a number after the sign.' };
	// A quantity of the trade, as its formula writes it.
	const [letter] = sum.match(/(?<![a-z])[dtrknl](?![a-z])/i) ?? [];
	if (letter !== undefined)
		return { typed, result: '', problem: `In place of ${letter.toUpperCase()} write its number.` };
	const hasUnits = /[a-z"”′″']/i.test(sum.replace(/x/gi, ''));
	const reading = await (hasUnits ? length : number).work(sum, units);
	switch (reading.state) {
		case 'read':
			return { typed, result: resultOf(reading.value, hasUnits, units), problem: '' };
		case 'which':
			return { typed, result: '', problem: reading.question };
		case 'unread':
			return { typed, result: '', problem: reading.why };
		case 'empty':
		case 'arithmetic':
			return { typed, result: '', problem: 'Write numbers and + − × ÷.' };
		default:
			return reading satisfies never;
	}
}

/** Four places, as a shop carries them. */
function resultOf(value: Exact, isLength: boolean, units: LengthUnit): string {
	return isLength ? length.write(value.valueOf(), units) : decimalText(value, 0, 4);
}
