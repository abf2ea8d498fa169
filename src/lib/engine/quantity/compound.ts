import { ratio } from './exact.ts';
import type { Part } from './measure.ts';
import { type Numeral, numerals } from './numeral.ts';
import type { Field, Found } from './reading.ts';
import { amountText, nameText, saidOf } from './said.ts';
import { type Unit, unitSpelt } from './units.ts';

interface Amount {
	readonly number: Numeral;
	readonly unit: Unit;
}

/** An amount in a unit and smaller ones: 1 ft 2 1/2 in. Only the last may be broken. */
export function compound(parts: readonly Part[], first: Unit, field: Field): Found {
	const amounts: Amount[] = [];
	for (const part of parts) {
		const before = amounts.at(-1);
		const unit = before ? followerOf(before, part.unit) : first;
		const [number, ...more] = numerals(part.number);
		if (!unit || typeof number !== 'object' || more.length > 0) return [];
		if (before && !fitsUnder(before, { number, unit })) return [];
		amounts.push({ number, unit });
	}
	return together(amounts, field);
}

/** The smaller unit behind another, when it is written so or left out. */
function followerOf({ unit }: Amount, spelling: string): Unit | undefined {
	const { smaller, dimension } = unit;
	const next = dimension.units.find(({ symbol }) => symbol === smaller);
	return spelling && unitSpelt(spelling, dimension) !== next ? undefined : next;
}

/** Whether the smaller amount is less than one of the larger unit, and that one is whole. */
function fitsUnder(larger: Amount, { number, unit }: Amount): boolean {
	const inLarger = number.value.mul(unit.size).div(larger.unit.size);
	return larger.number.form === 'whole' && inLarger.compare(1) < 0;
}

function together(amounts: readonly Amount[], field: Field): Found {
	const last = amounts.at(-1);
	if (!last) return [];
	const value = amounts.reduce(
		(sum, { number, unit }) => sum.add(number.value.mul(unit.size)),
		ratio(0n)
	);
	const isFraction = ({ number }: Amount) => number.grain.n === 0n;
	const written = amounts.map((one) => amountText(one.number.value, one.unit, isFraction(one), 12));
	const { unit } = amounts.find((one) => !one.unit.size.equals(1)) ?? last;
	const said =
		saidOf(value, written.join(' '), unit, isFraction(last), field) +
		nameText(value, isFraction(last), field);
	return [{ value, said, grain: last.number.grain.mul(last.unit.size).valueOf() }];
}
