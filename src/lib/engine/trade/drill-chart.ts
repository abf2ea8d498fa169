import { drillSize } from '../quantity/drills.ts';
import { TradeError } from '../solver/trade-function.ts';
import { source } from './source.ts';

/*
 * Number and letter drills as rows of one chart, from Z, the largest, over A and No. 1 down to
 * No. 60.
 */
export const drillChartSource = source('airframe', 'ch. 4, p. 4-18, Fig. 4-47');

const letters = [...'ZYXWVUTSRQPONMLKJIHGFEDCBA'];
const rows: readonly string[] = [
	...letters,
	...Array.from({ length: 60 }, (_, i) => `No. ${i + 1}`)
];

/** Size in inches of the drill called `No. 30`, `F` or `1/8`. */
export function chartSize(name: string): number {
	const size = drillSize(name);
	if (size) return size.valueOf();
	throw new TradeError(
		`No drill is called ${name.slice(0, 20)}: write a number from No. 1 to No. 60, a letter or a fraction.`
	);
}

/** The number or letter drill `down` rows below this one in the chart; below is smaller. */
function rowFrom(name: string, down: number): string {
	const at = rows.indexOf(name);
	const row = at < 0 ? undefined : rows[at + down];
	if (row) return row;
	throw new TradeError(`The chart has no row next to ${name.slice(0, 20)}.`);
}

export function nextLarger(name: string): string {
	return rowFrom(name, -1);
}

export function nextSmaller(name: string): string {
	return rowFrom(name, 1);
}

/** The number in the name of a number drill. */
export function drillNumber(name: string): number {
	const number = /^No\. (\d{1,2})$/.exec(name)?.[1];
	if (number) return Number(number);
	throw new TradeError(`${name.slice(0, 20)} is no number drill.`);
}
