import { letterDrill, numberDrill } from './drills.ts';
import { fromDigits, ratio } from './exact.ts';
import { dashesPerInch } from './format.ts';
import { dashOption, drillOption } from './option.ts';
import { dashesIn } from './part-number.ts';
import type { Expected, Found } from './reading.ts';

/** Sizes that go by a name: rivet dash numbers and part numbers, number and letter drills. */
export function namedSizes(entry: string, expected: Expected): Found {
	if (expected.kind !== 'length') return [];
	return expected.style && dashesPerInch[expected.style]
		? rivetSizes(entry, expected)
		: drillSizes(entry, expected);
}

const dash = /^(?:-|dash(?: no\.?| number)? ?-?) ?(\d{1,2})(?:\.([05]))?$/;

function rivetSizes(entry: string, expected: Expected): Found {
	const [, whole, half = ''] = dash.exec(entry) ?? [];
	if (whole) {
		const number = fromDigits(whole, half);
		const made = number.n > 0n && (number.d === 1n || expected.style === 'rivet-length');
		return made ? [dashOption(number, expected)] : [];
	}
	const code = dashesIn(entry);
	if (!code) return [];
	const number = expected.style === 'rivet-length' ? code.length : code.diameter;
	const note = `−${number} taken from ${code.name}`;
	return [{ ...dashOption(ratio(BigInt(number * 2), 2n), expected), note }];
}

const nameOnly = 'That is the name of a drill. Write its size, such as 0.128 in.';

function drillSizes(entry: string, expected: Expected): Found {
	const [, number, letter] =
		/^(?:#|no\.?|nr\.?|number) ?(\d{1,3})$|^letter ?([a-z])$/.exec(entry) ?? [];
	if (number) {
		const size = numberDrill(Number(number));
		if (expected.inFigures) return nameOnly;
		if (!size) return 'Number drills run from No. 1 to No. 60. Write the size in inches.';
		return [drillOption(`No. ${Number(number)}`, size, expected)];
	}
	const named = letter ?? (expected.style === 'drill' && /^[a-z]$/.test(entry) ? entry : '');
	const size = letterDrill(named);
	if (size && expected.inFigures) return nameOnly;
	return size ? [drillOption(`letter ${named.toUpperCase()}`, size, expected)] : [];
}
