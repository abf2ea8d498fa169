import { type Exact, isWithin } from '../../exact.ts';
import { asFraction } from '../../sixty-fourths.ts';
import { ownUnit } from '../../units.ts';
import type { LengthUnit } from '../../value.ts';
import type { Entry, KindAnswers, Nearness } from '../kind.ts';
import type { NumberKind } from '../measured.ts';

/** What a kind of numbers is asked once something was answered. */
export const numberAnswers = (kindIs: () => NumberKind): KindAnswers<number, Exact> => ({
	judge: ({ value }, right, tolerance) =>
		isWithin(value, right, tolerance) ? { is: 'right' } : { is: 'off' },
	isWritten: (entry, value, nearness = 'rounded') =>
		Math.abs(entry.value.valueOf() - value) <= roomFor(entry, nearness, kindIs().fine),
	toValue: ({ value }) => value.valueOf(),
	scaled: ({ value, grain }, factor) => ({
		value: value.mul(factor),
		grain: grain * factor.valueOf()
	}),
	mathml: (value, units = 'in') => numberMathml(kindIs(), value, units)
});

function numberMathml(kind: NumberKind, value: number, units: LengthUnit): string {
	const inBase = ownUnit(kind.dimension, units).size.equals(1);
	const fraction = kind.fractions && inBase ? asFraction(value) : null;
	if (!fraction || fraction.numerator === 0) return `<mn>${kind.number(value, units)}</mn>`;
	const { whole, numerator, denominator } = fraction;
	const part = `<mfrac><mn>${numerator}</mn><mn>${denominator}</mn></mfrac>`;
	return whole === 0 ? part : `<mrow><mn>${whole}</mn>${part}</mrow>`;
}

/** Parts of the last place carried that a typed number may be off, besides its own last place. */
const lost: Readonly<Record<Exclude<Nearness, 'very'>, number>> = { rounded: 0.5, exact: 0.05 };
const mostOfValue: typeof lost = { rounded: 1e9, exact: 0.01 };

/** Half of the last of four digits is so small a part of a number, or less. */
const fourDigits = 2000;

/**
 * How far a typed number may be from a value that it is taken for. Entries coarser than five of
 * the last place carried are matched no wider, or anything would match them; four digits are enough.
 */
function roomFor({ value, grain }: Entry<Exact>, nearness: Nearness, fine: number): number {
	if (nearness === 'very') return 1e-6;
	const size = Math.abs(value.valueOf());
	const onRule = grain === 0 && value.d > 8n && 64n % value.d === 0n;
	// Of a small number even a tenth of the last place carried is much.
	const inPlaces = Math.min(lost[nearness] / fine, size * mostOfValue[nearness]);
	const room = onRule && nearness === 'rounded' ? 1 / 128 : Math.max(grain, inPlaces);
	return Math.min(room, Math.max(5.5 / fine, size / fourDigits)) + 1e-9;
}
