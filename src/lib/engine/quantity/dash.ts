import { decimalText, type Exact } from './exact.ts';

/** One of the two sizes of a rivet that dash numbers stand for. */
export interface DashSize {
	readonly is: 'length' | 'diameter';
	/** Dash numbers to the inch: lengths count 16ths, diameters 32nds. */
	readonly perInch: number;
	/** Whether half dash numbers are made. */
	readonly halves: boolean;
}

/** Dash numbers have two digits. */
export const longestDash = 99;

/** `−5` for a 5/16 in rivet length; null when the size is no whole or half dash number. */
export function dashText(value: Exact, { perInch, halves }: DashSize): string | null {
	const number = value.mul(perInch);
	const whole = (halves ? 2n : 1n) % number.d === 0n;
	const made = whole && number.compare(1) >= 0 && number.compare(longestDash) <= 0;
	return made ? `−${decimalText(number, 0, 1)}` : null;
}
