import * as v from 'valibot';
import { keptJson } from '../device/kept.ts';
import { maxReadings, maxTyped } from '$lib/engine/schedule/event.ts';
import { packed, unpacked } from '$lib/exchange/fragment.ts';

/** Longest name of a part, and longest student code, in characters. */
export const longestName = 60;
export const longestStudent = 24;
/** Longest note to an instructor. */
export const longestNote = 300;

const key = v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,39}$/));

const entrySchema = v.object({
	/** Id of the method. */
	method: v.pipe(v.string(), v.maxLength(60)),
	part: v.pipe(v.string(), v.maxLength(longestName)),
	/** The student's code. */
	student: v.pipe(v.string(), v.maxLength(longestStudent)),
	/** Id of the instrument; empty where none was chosen. */
	tool: v.pipe(v.string(), v.maxLength(60)),
	/** What a bare length is in. */
	units: v.picklist(['in', 'mm']),
	values: v.pipe(v.record(key, v.pipe(v.string(), v.maxLength(maxReadings))), v.maxEntries(20)),
	own: v.pipe(v.record(key, v.pipe(v.string(), v.maxLength(maxTyped))), v.maxEntries(20)),
	/** The question to an instructor. */
	note: v.pipe(v.string(), v.maxLength(longestNote))
});

/** A check as it was entered; everything else is worked from it again. */
export type CheckEntry = Readonly<v.InferOutput<typeof entrySchema>>;

/** The entry in a text that was kept here; null when it is none. */
export function readEntry(text: string | null): CheckEntry | null {
	return checkedEntry(keptJson(text));
}

function checkedEntry(raw: unknown): CheckEntry | null {
	const read = v.safeParse(entrySchema, raw);
	return read.success ? read.output : null;
}

const version = 2;

/** The fragment of the address that shows a check. */
export function writeCheckLink(entry: CheckEntry): Promise<string> {
	return packed(version, { check: entry });
}

/** Reads such a fragment: the entry, or one sentence; never throws. */
export async function readCheckLink(fragment: string): Promise<CheckEntry | string> {
	const reading = await unpacked(version, fragment);
	if (!reading.ok && reading.reason === 'newer') {
		return 'Update Bucktail first: a newer version made that link.';
	}
	const found = reading.ok ? v.safeParse(v.object({ check: entrySchema }), reading.value) : null;
	if (found?.success) return found.output.check;
	return 'That link is damaged or cut short; ask for it to be copied and sent again.';
}
