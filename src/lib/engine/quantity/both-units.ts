import type { LengthUnit } from './value.ts';

const number = String.raw`(?:\d+ )?\d*\.?\d+(?:/\d+)?`;
const sizes = new RegExp(
	String.raw`(?<![\w./-]|No\. )((?:${number}(?:, | and | to | × ))*${number}) in(?![\w³/])`,
	'g'
);

/**
 * A sentence whose sizes are inches, with each said in millimetres too where those are shown:
 * `the next 1/16 in (1.59 mm) up`.
 */
export function inBothUnits(text: string, units: LengthUnit): string {
	if (units === 'in') return text;
	return text.replace(sizes, (all, list: string) => {
		const metric = list.replace(new RegExp(number, 'g'), (size) => millimetres(size));
		return `${all} (${metric} mm)`;
	});
}

/** Millimetres to two places of inches written as 3, 0.040, 3/32 or 1 1/2. */
function millimetres(size: string): string {
	const inches = size
		.split(' ')
		.map((part) => part.split('/').map(Number))
		.reduce((sum, [top = 0, bottom = 1]) => sum + top / bottom, 0);
	return String(Math.round(inches * 2540) / 100);
}
