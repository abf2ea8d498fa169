import { type Exact, ratio } from './exact.ts';
import type { LengthUnit } from './value.ts';

/** A unit that may be written behind a number. */
export interface Unit {
	readonly dimension: Dimension;
	/** As the unit is written back. */
	readonly symbol: string;
	/** Base units of its dimension in one of this. */
	readonly size: Exact;
	/** Accepted spellings: lower case, ASCII quotes, no dots or spaces. */
	readonly spellings: readonly string[];
	/** Symbol of the smaller unit that may follow: in behind ft. */
	readonly smaller: string | null;
}

/** What a number measures; what formulas compute with. */
export interface Dimension {
	/** The name that trade functions take and give it by: `length`. */
	readonly name: string;
	/** `a length`: for refusing one where another is wanted. */
	readonly noun: string;
	/** The base unit as scripts are told it: `in`, `lb/in3`; empty for a plain number and words. */
	readonly unit: string;
	/**
	 * The base unit as mathjs writes it, which the dimensions of formulas are checked with; empty
	 * for a plain number, null for what is not computed with.
	 */
	readonly formula: string | null;
	/** Units that a formula may name, by spelling. */
	readonly literals: readonly string[];
	/** The base unit first. */
	readonly units: readonly Unit[];
	/** Larger values are typing slips. */
	readonly largest: number;
	/** Units that a value is shown in where lengths go by `unit`: the first also for bare numbers. */
	readonly shownIn: (unit: LengthUnit) => readonly Unit[];
	/** Shop words for its units, put as plain amounts: `5 32nds` → `5/32 in`. */
	readonly spelt: (text: string) => string;
}

/** Symbol, size as numerator and denominator, spellings, and the smaller unit that may follow. */
export type UnitRow = readonly [
	symbol: string,
	numerator: bigint,
	denominator: bigint,
	spellings: string,
	smaller?: string
];

type Parts = Pick<Dimension, 'name' | 'noun' | 'unit' | 'formula'> &
	Partial<Pick<Dimension, 'literals' | 'largest' | 'shownIn' | 'spelt'>> & {
		readonly units: readonly UnitRow[];
	};

/** A dimension with its units; the first one is its base unit. */
export function dimension(parts: Parts): Dimension {
	const made: Dimension = {
		literals: [],
		largest: 1e6,
		shownIn: () => made.units.slice(0, 1),
		spelt: (text) => text,
		...parts,
		units: parts.units.map(([symbol, top, bottom, spellings, smaller = null]) => ({
			// Read once the dimension stands.
			get dimension() {
				return made;
			},
			symbol,
			size: ratio(top, bottom),
			spellings: spellings.split(' '),
			smaller
		}))
	};
	return made;
}

/** Whether its values are bare numbers. */
export function isPlain({ formula }: Dimension): boolean {
	return formula === '';
}

let known: readonly Dimension[] = [];

/**
 * Makes known the dimensions that kinds have, so that an amount of another one can be named where
 * it is refused. Called once, beside the list of kinds.
 */
export function knowDimensions(all: readonly Dimension[]): void {
	known = all;
}

/**
 * The unit with this spelling (lower case, ASCII quotes): of the wanted dimension if there is one,
 * else of another known one, so that it can be named.
 */
export function unitSpelt(spelling: string, wanted: Dimension): Unit | undefined {
	const text = spelling.replace(/[. ]/g, '');
	for (const { units } of [wanted, ...known]) {
		const unit = units.find(({ spellings }) => spellings.includes(text));
		if (unit) return unit;
	}
	return undefined;
}

/** The unit of a dimension with this symbol. */
export function unitOf({ units }: Dimension, symbol: string): Unit {
	const unit = units.find((one) => one.symbol === symbol);
	if (!unit) throw new Error(`unknown unit: ${symbol}`);
	return unit;
}

/** The unit of a bare number, and the first that a value is shown in. */
export function ownUnit({ shownIn }: Dimension, unit: LengthUnit): Unit {
	const [own] = shownIn(unit);
	if (!own) throw new Error('a dimension without units');
	return own;
}
