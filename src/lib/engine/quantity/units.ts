import { type Exact, ratio } from './exact.ts';
import type { Kind } from './kind.ts';

/** A unit that may be written behind a number. */
export interface Unit {
	readonly kind: Kind;
	/** As the unit is written back. */
	readonly symbol: string;
	/** Base units (inch, degree, pound, pound per cubic inch) in one of this. */
	readonly size: Exact;
}

/*
 * 1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly: National Bureau of Standards, Federal Register
 * notice 59-5442, 1 July 1959. The radian has no exact size in degrees; 21 places are kept.
 *
 * Kind, symbol, numerator and denominator of the size, accepted spellings.
 */
const rows: readonly [Kind, string, bigint, bigint, string][] = [
	['length', 'in', 1n, 1n, 'in inch inches "'],
	['length', 'ft', 12n, 1n, "ft foot feet '"],
	['length', 'mm', 5n, 127n, 'mm millimeter millimeters millimetre millimetres'],
	['length', 'cm', 50n, 127n, 'cm centimeter centimeters centimetre centimetres'],
	['length', 'm', 5000n, 127n, 'm meter meters metre metres'],
	['length', 'thou', 1n, 1000n, 'thou mil mils thousandth thousandths'],
	['angle', '°', 1n, 1n, '° deg degree degrees'],
	['angle', '′', 1n, 60n, "'"],
	['angle', '″', 1n, 3600n, '"'],
	['angle', 'rad', 57_295779513082320876798n, 10n ** 21n, 'rad radian radians'],
	['weight', 'lb', 1n, 1n, 'lb lbs pound pounds'],
	['weight', 'oz', 1n, 16n, 'oz ounce ounces'],
	['weight', 'kg', 100_000_000n, 45_359237n, 'kg kilogram kilograms'],
	['weight', 'g', 100_000n, 45_359237n, 'g gram grams'],
	['density', 'lb/in³', 1n, 1n, 'lb/in3 lb/in^3 lb/in³ lb/cuin'],
	['density', 'g/cm³', 16_387064n, 453_592370n, 'g/cm3 g/cm^3 g/cm³ g/cc'],
	[
		'number',
		'',
		1n,
		1n,
		'pc pcs piece pieces ea each rivet rivets hole holes space spaces part parts'
	]
];

const units: readonly (Unit & { spellings: readonly string[] })[] = rows.map(
	([kind, symbol, top, bottom, spellings]) => ({
		kind,
		symbol,
		size: ratio(top, bottom),
		spellings: spellings.split(' ')
	})
);

/**
 * The unit with this spelling (lower case, ASCII quotes): of the wanted kind if there is one, else
 * of another kind, so that it can be named.
 */
export function unitSpelt(spelling: string, kind: Kind): Unit | undefined {
	const text = spelling.replace(/[. ]/g, '');
	const fits = units.filter(({ spellings }) => spellings.includes(text));
	return fits.find((unit) => unit.kind === kind) ?? fits[0];
}

/** The unit of a kind with this symbol. */
export function unitOf(kind: Kind, symbol: string): Unit {
	const unit = units.find((one) => one.kind === kind && one.symbol === symbol);
	if (!unit) throw new Error(`unknown unit: ${symbol}`);
	return unit;
}
