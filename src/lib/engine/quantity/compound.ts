import { ratio } from './exact.ts';
import type { Part } from './measure.ts';
import { type Numeral, numerals } from './numeral.ts';
import type { Expected, Found } from './reading.ts';
import { amountText, saidOf } from './said.ts';
import { type Unit, unitOf, unitSpelt } from './units.ts';

interface Amount {
	readonly number: Numeral;
	readonly unit: Unit;
}

/** The smaller unit that may follow one. */
const followers: Readonly<Record<string, string>> = { ft: 'in', lb: 'oz', '°': '′', '′': '″' };

/** An amount in a unit and smaller ones: 1 ft 2 1/2 in. Only the last may be broken. */
export function compound(parts: readonly Part[], first: Unit, expected: Expected): Found {
	const amounts: Amount[] = [];
	for (const part of parts) {
		const before = amounts.at(-1);
		const unit = before ? followerOf(before, part.unit, expected) : first;
		const [number, ...more] = numerals(part.number);
		if (!unit || typeof number !== 'object' || more.length > 0) return [];
		if (before && !fitsUnder(before, { number, unit })) return [];
		amounts.push({ number, unit });
	}
	return together(amounts, expected);
}

function followerOf({ unit }: Amount, spelling: string, { kind }: Expected): Unit | undefined {
	const symbol = followers[unit.symbol];
	const next = spelling ? unitSpelt(spelling, kind) : symbol && unitOf(kind, symbol);
	return next && next.symbol === symbol ? next : undefined;
}

/** Whether the smaller amount is less than one of the larger unit, and that one is whole. */
function fitsUnder(larger: Amount, { number, unit }: Amount): boolean {
	const inLarger = number.value.mul(unit.size).div(larger.unit.size);
	return larger.number.form === 'whole' && inLarger.compare(1) < 0;
}

function together(amounts: readonly Amount[], expected: Expected): Found {
	const last = amounts.at(-1);
	if (!last) return [];
	const value = amounts.reduce(
		(sum, { number, unit }) => sum.add(number.value.mul(unit.size)),
		ratio(0n)
	);
	const isFraction = ({ number }: Amount) => number.grain.n === 0n;
	const written = amounts.map((one) => amountText(one.number.value, one.unit, isFraction(one), 12));
	const { unit } = amounts.find((one) => !one.unit.size.equals(1)) ?? last;
	const said = saidOf(value, written.join(' '), unit, isFraction(last), expected);
	return [{ value, said, grain: last.number.grain.mul(last.unit.size).valueOf() }];
}
