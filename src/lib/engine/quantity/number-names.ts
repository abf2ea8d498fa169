import type { DashSize } from './dash.ts';
import { dashIn, dashNames } from './dash-names.ts';
import { type Exact, ratio } from './exact.ts';
import { inUnit, listed } from './option.ts';
import { dashesIn, diameterIn } from './part-number.ts';
import type { Field, NameReading, Option } from './reading.ts';
import { ownUnit } from './units.ts';

const plainNames: NameReading = {
	withoutNoun: (entry, field) => ({ entry, field }),
	named: () => [],
	bare: () => ({ found: [], only: false }),
	said: () => ''
};

/** The number that stands for a rivet's length or diameter, with its dash: `-5`, `dash 5`, `AD4-5`. */
export function dashNumbers(size: DashSize): NameReading {
	return {
		...plainNames,
		withoutNoun: dashNames(size).withoutNoun,
		named(entry, field) {
			const number = dashIn(entry, size);
			if (number) return [plainOption(number, field)];
			const code = dashesIn(entry);
			const dash = code?.[size.is] ?? (size.is === 'diameter' ? diameterIn(entry)?.diameter : null);
			if (dash === undefined || dash === null) return [];
			return [plainOption(ratio(BigInt(dash * 2), 2n), field)];
		}
	};
}

/** The number of a head standard with the standard before it: `MS20470`, `AN470`. */
export const headNumbers: NameReading = {
	...plainNames,
	named(entry, field) {
		const [, number] = /^(?:ms ?-?20|an ?-?)(\d{3})$/.exec(entry) ?? [];
		return number === undefined ? [] : [plainOption(ratio(BigInt(number)), field)];
	}
};

function plainOption(number: Exact, field: Field): Option {
	return inUnit(listed(number, 'decimal'), ownUnit(field.kind.dimension, field.unit), field);
}
