import { drillName, letterDrill, numberDrill } from './drills.ts';
import type { Exact } from './exact.ts';
import type { Numeral } from './numeral.ts';
import { amountIn, listed } from './option.ts';
import type { Entry, Field, Found, NameReading, Option } from './reading.ts';
import { unitOf } from './units.ts';

/** Where a drill is asked for: its name in any form, and with its size when written. */
export const drillsAlone: NameReading = {
	withoutNoun: (entry, field) => ({ entry: withoutDrill(entry), field }),
	named: (entry, field) => named(entry, field, true),
	bare(number, field) {
		if (number.form !== 'whole') return { found: [], only: false };
		const size = numberDrill(number.value.valueOf());
		// A drill is never whole inches across.
		const only = field.unit !== 'mm';
		return { found: size ? [drillOption(`No. ${number.value.n}`, size, field)] : [], only };
	},
	said(size, fraction) {
		const name = fraction ? null : drillName(size);
		return name ? `, the ${name} drill` : '';
	}
};

/** Where any length is asked for: a drill may be named in full, `#30` or `letter F drill`. */
export const drillsNamed: NameReading = {
	withoutNoun: (entry, field) => asDrill(entry, field, drillsAlone),
	named: (entry, field) => named(entry, field, false),
	bare: () => ({ found: [], only: false }),
	said: () => ''
};

const nameOnly = 'That is the name of a drill. Write its size, such as 0.128 in.';

/** Where a size in figures is asked for: a drill's name would beg the question. */
export const drillsInFigures: NameReading = {
	...drillsNamed,
	withoutNoun: (entry, field) =>
		asDrill(entry, field, {
			...drillsAlone,
			named: (text, drill) => refused(named(text, drill, true)),
			bare: (number, drill) => {
				const { found, only } = drillsAlone.bare(number, drill);
				return { found: refused(found), only };
			}
		}),
	named: (entry, field) => refused(named(entry, field, false))
};

function refused(found: Found): Found {
	return found.length > 0 ? nameOnly : found;
}

/** With the word `drill`, an entry is read as one, as if a drill were asked for. */
function asDrill(entry: string, field: Field, names: NameReading): Entry {
	const size = withoutDrill(entry);
	return { entry: size, field: size === entry ? field : { ...field, names } };
}

function withoutDrill(entry: string): string {
	return entry.replace(/^drill (?:size )?| (?:drill|bit)$/g, '');
}

function named(entry: string, field: Field, alone: boolean): Found {
	const [, number, letter] =
		/^(?:#|no\.?|nr\.?|number) ?(\d{1,3})$|^letter ?([a-z])$/.exec(entry) ?? [];
	if (number) {
		const size = numberDrill(Number(number));
		if (!size) return 'Number drills run from No. 1 to No. 60. Write the size in inches.';
		return [drillOption(`No. ${Number(number)}`, size, field)];
	}
	const name = letter ?? (alone && /^[a-z]$/.test(entry) ? entry : '');
	const size = letterDrill(name);
	return size ? [drillOption(`letter ${name.toUpperCase()}`, size, field)] : [];
}

/** A drill, read as its size: `No. 30, 0.1285 in`. */
function drillOption(name: string, size: Exact, field: Field): Option {
	const number: Numeral = listed(size, 'decimal');
	const option = amountIn(number, unitOf(field.kind.dimension, 'in'), field);
	return { ...option, said: `${name}, ${option.said}` };
}
