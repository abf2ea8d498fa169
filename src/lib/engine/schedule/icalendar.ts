import { isoOf } from './day.ts';

/*
 * Calendar files as other programs read them: iCalendar, RFC 5545. Times of day are local time
 * without a zone ("floating", 3.3.5), so an entry stays at its hour wherever the file is opened.
 */

/** One entry: a whole day, or a stretch of one. */
export interface CalendarEntry {
	/** Must stay the same when the calendar is made again, so that the entry is not doubled. */
	readonly uid: string;
	readonly day: number;
	/** From when, in minutes after midnight, and for how many minutes; left out for a whole day. */
	readonly time?: { readonly start: number; readonly minutes: number };
	readonly summary: string;
	readonly description?: string;
}

/**
 * The text of a calendar file.
 *
 * @param stamp when it is made, in milliseconds since 1970-01-01 UTC
 * @throws Error without entries, because a calendar must have one (3.4)
 */
export function icalendar(entries: readonly CalendarEntry[], stamp: number): string {
	if (entries.length === 0) throw new Error('calendar without entries');
	const lines = [
		'BEGIN:VCALENDAR',
		'VERSION:2.0',
		'PRODID:-//Bucktail//Plan//EN',
		...entries.flatMap((entry) => eventLines(entry, utcTime(stamp))),
		'END:VCALENDAR'
	];
	return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(entry: CalendarEntry, stamp: string): string[] {
	const { uid, summary, description } = entry;
	return [
		'BEGIN:VEVENT',
		`UID:${escaped(uid)}`,
		`DTSTAMP:${stamp}`,
		...timeLines(entry),
		`SUMMARY:${escaped(summary)}`,
		...(description === undefined ? [] : [`DESCRIPTION:${escaped(description)}`]),
		'END:VEVENT'
	];
}

// An event that starts on a date lasts that day (3.6.1). It must not make the person look busy.
function timeLines({ day, time }: CalendarEntry): string[] {
	if (!time) return [`DTSTART;VALUE=DATE:${date(day)}`, 'TRANSP:TRANSPARENT'];
	return [`DTSTART:${date(day)}T${timeOfDay(time.start * 60)}`, `DURATION:PT${time.minutes}M`];
}

function utcTime(milliseconds: number): string {
	const seconds = Math.floor(milliseconds / 1000);
	const day = Math.floor(seconds / 86_400);
	return `${date(day)}T${timeOfDay(seconds - day * 86_400)}Z`;
}

function date(day: number): string {
	return isoOf(day).replaceAll('-', '');
}

function timeOfDay(seconds: number): string {
	const parts = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
	return parts.map((part) => String(part).padStart(2, '0')).join('');
}

/** As a TEXT value (3.3.11): line breaks written as \n, other control characters left out. */
function escaped(text: string): string {
	return (
		text
			.replace(/[\\;,]/g, '\\$&')
			.replace(/\r\n|\r|\n/g, '\\n')
			// eslint-disable-next-line no-control-regex -- what a value may not hold
			.replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
	);
}

/** Longest line, in octets of UTF-8 without the line break (3.1). */
const longest = 75;

/** A long line in several, each after the first led in by a space; no character is split. */
function folded(line: string): string {
	let text = '';
	let octets = 0;
	for (const character of line) {
		const more = octetsOf(character.codePointAt(0) ?? 0);
		if (octets + more > longest) {
			text += '\r\n ';
			octets = 1;
		}
		text += character;
		octets += more;
	}
	return text;
}

function octetsOf(codePoint: number): number {
	if (codePoint < 0x80) return 1;
	if (codePoint < 0x800) return 2;
	return codePoint < 0x10000 ? 3 : 4;
}
