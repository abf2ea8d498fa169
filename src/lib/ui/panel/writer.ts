import { createContext } from 'svelte';
import { gaugeText, inchesText } from '$lib/engine/panel/write.ts';
import { decimalText, exactly } from '$lib/engine/quantity/exact.ts';
import { nearest64 } from '$lib/engine/quantity/sixty-fourths.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';

/** How the panel's lengths, which are inches, are written in the units that were chosen. */
export interface Writer {
	readonly units: LengthUnit;
	/** A size: `13 11/16`, `347.7`. */
	bare(inches: number): string;
	/** The same with its unit. */
	size(inches: number): string;
	/** A thickness or a distance in decimals, with its unit: `0.032 in`, `0.81 mm`. */
	gauge(inches: number): string;
	/** A sentence of the planner, whose lengths are inches. */
	says(sentence: string): string;
	/** A place as it is laid out: decimals and the nearest 64th, `1.268 (≈ 1 17/64)`; or `32.2`. */
	place(inches: number): string;
}

const inInches: Writer = {
	units: 'in',
	bare: (inches) => inchesText(inches).replace(' in', ''),
	size: inchesText,
	says: (sentence) => sentence,
	gauge: gaugeText,
	place: (inches) => `${inches.toFixed(3)} (${nearest64(inches)})`
};

const millimetres = (inches: number, least: number, most: number) =>
	decimalText(exactly(Math.round(inches * 25.4e4) / 1e4), least, most);

/** Sizes in a sentence: `13 11/16 in`, `0.032 in`. */
const inchesIn = /(?<![\d./-])(\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?) in\b/g;

const inMillimetres: Writer = {
	units: 'mm',
	bare: (inches) => millimetres(inches, 0, 1),
	size: (inches) => `${millimetres(inches, 0, 1)} mm`,
	says: (sentence) => sentence.replace(inchesIn, (_, text: string) => `${fromInches(text)} mm`),
	gauge: (inches) => `${millimetres(inches, 0, 2)} mm`,
	place: (inches) => millimetres(inches, 1, 1)
};

export function writerFor(units: LengthUnit): Writer {
	return units === 'mm' ? inMillimetres : inInches;
}

/** The writer of the page that a component stands on, asked each time: units may be switched. */
export const [writerHere, provideWriter] = createContext<() => Writer>();

const bareNumber = /^\s*[\d\s./]*\d[\d\s./]*$/;

/** What is kept of an entry: a bare number in millimetres gets its unit, and those of a list theirs. */
export function keptEntry(text: string, units: LengthUnit): string {
	if (units === 'in') return text;
	return text.replace(/[^,;\n]+/g, (one) => (bareNumber.test(one) ? `${one} mm` : one));
}

/** What stands in a field: sizes kept in millimetres without their unit, bare inches worked out. */
export function shownEntry(text: string, units: LengthUnit): string {
	if (units === 'in') return text;
	return text.replace(/[^,;\n]+/g, (one) => {
		if (one.endsWith(' mm')) return one.slice(0, -3);
		return bareNumber.test(one) ? `${one.match(/^\s*/)?.[0] ?? ''}${fromInches(one)}` : one;
	});
}

/** Bare inches such as `1 3/4` in millimetres; what is no number stays as it is. */
function fromInches(text: string): string {
	const parts = /^\s*(?:([\d.]+)(?:\s+|$))?(?:(\d+)\s*\/\s*(\d+))?\s*$/.exec(text);
	if (!parts) return text.trim();
	const [, whole = '0', top = '0', bottom = '1'] = parts;
	const inches = Number(whole) + Number(top) / Number(bottom);
	return Number.isFinite(inches) ? millimetres(inches, 0, 2) : text.trim();
}
