import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import { type CalendarEntry, icalendar } from '../../../src/lib/engine/schedule/icalendar.ts';
import { readICalendar } from './read-icalendar.ts';

const entry: CalendarEntry = {
	uid: 'a-20261211',
	day: dayOf('2026-12-11'),
	summary: 'Exam'
};
// 25 November 2026, 14:05:09.876 UTC
const stamp = Date.UTC(2026, 10, 25, 14, 5, 9, 876);

test('one whole day, line by line', () => {
	expect(icalendar([entry], stamp).split('\r\n')).toEqual([
		'BEGIN:VCALENDAR',
		'VERSION:2.0',
		'PRODID:-//Bucktail//Plan//EN',
		'BEGIN:VEVENT',
		'UID:a-20261211',
		'DTSTAMP:20261125T140509Z',
		'DTSTART;VALUE=DATE:20261211',
		'TRANSP:TRANSPARENT',
		'SUMMARY:Exam',
		'END:VEVENT',
		'END:VCALENDAR',
		''
	]);
});

test('a time of day is local time, with how long it lasts', () => {
	const [event] = readICalendar(
		icalendar([{ ...entry, time: { start: 1110, minutes: 22 } }], stamp)
	);
	expect(event).toMatchObject({ start: '20261211T183000', duration: 'PT22M', wholeDay: false });
});

test.each([
	{ typed: 'Grip, shank; needed', written: 'SUMMARY:Grip\\, shank\\; needed' },
	{ typed: 'one\\two', written: 'SUMMARY:one\\\\two' },
	{ typed: 'one\ntwo\r\nthree\rfour', written: 'SUMMARY:one\\ntwo\\nthree\\nfour' },
	{ typed: 'bell\u0007 and tab\t', written: 'SUMMARY:bell and tab\t' }
])('$typed is escaped', ({ typed, written }) => {
	expect(icalendar([{ ...entry, summary: typed }], stamp).split('\r\n')).toContain(written);
});

describe('a long line', () => {
	// 8 octets of SUMMARY: leave 67 in the first line and 74 in each that follows
	test.each([
		{ length: 67, lines: ['SUMMARY:' + 'x'.repeat(67)] },
		{ length: 68, lines: ['SUMMARY:' + 'x'.repeat(67), ' x'] },
		{ length: 142, lines: ['SUMMARY:' + 'x'.repeat(67), ' ' + 'x'.repeat(74), ' x'] }
	])('of $length letters is folded at 75 octets', ({ length, lines }) => {
		const text = icalendar([{ ...entry, summary: 'x'.repeat(length) }], stamp);
		expect(text.split('\r\n').slice(8, -3)).toEqual(lines);
	});

	test('is not folded inside a character', () => {
		const summary = 'x'.repeat(66) + '½°😀';
		const lines = icalendar([{ ...entry, summary }], stamp)
			.split('\r\n')
			.slice(8, -3);
		expect(lines).toEqual(['SUMMARY:' + 'x'.repeat(66), ' ½°😀']);
	});
});

test('a calendar needs an entry', () => {
	expect(() => icalendar([], stamp)).toThrow('calendar without entries');
});

const text = fc.string({ unit: 'grapheme', maxLength: 200 });
const someEntry: fc.Arbitrary<CalendarEntry> = fc.record(
	{
		uid: fc.uuid(),
		day: fc.integer({ min: 0, max: dayOf('9999-12-31') }),
		time: fc.record({
			start: fc.integer({ min: 0, max: 1439 }),
			minutes: fc.integer({ min: 1, max: 480 })
		}),
		summary: text,
		description: text
	},
	{ requiredKeys: ['uid', 'day', 'summary'] }
);

test('a strict reader reads back every entry', () => {
	const plain = (typed: string) => typed.replace(/\r\n?/g, '\n');
	fc.assert(
		fc.property(
			fc.array(someEntry, { minLength: 1, maxLength: 5 }),
			fc.integer({ min: 0, max: Date.UTC(9999, 11, 31) }),
			(entries, at) => {
				const read = readICalendar(icalendar(entries, at));
				const iso = new Date(at).toISOString().replace(/[-:]|\.\d+/g, '');
				expect(read).toHaveLength(entries.length);
				read.forEach((event, i) => {
					const { uid, day, time, summary, description } = entries[i] ?? entry;
					const date = new Date(day * 864e5).toISOString().slice(0, 10).replaceAll('-', '');
					expect(event).toMatchObject({ uid, stamp: iso, wholeDay: time === undefined });
					expect(event.start.slice(0, 8)).toBe(date);
					expect(event.duration).toBe(time && `PT${time.minutes}M`);
					expect(event.summary).toBe(plain(summary));
					expect(event.description).toBe(description && plain(description));
				});
			}
		)
	);
});

describe('the strict reader refuses', () => {
	const good = icalendar([{ ...entry, summary: 'x'.repeat(70) }], stamp);
	test.each([
		{ what: 'bare line feeds', bad: good.replaceAll('\r\n', '\n') },
		{ what: 'a line that was not folded', bad: good.replace('\r\n x', 'x') },
		{ what: 'an open escape', bad: good.replace('SUMMARY:x', 'SUMMARY:x,') },
		{ what: 'a day that is none', bad: good.replace('20261211\r\nTRANSP', '20261131\r\nTRANSP') },
		{ what: 'no UID', bad: good.replace('UID:a-20261211\r\n', '') },
		{ what: 'a local stamp', bad: good.replace('09Z', '09') },
		{ what: 'an event without an end', bad: good.replace('END:VEVENT\r\n', '') }
	])('$what', ({ bad }) => {
		expect(bad).not.toBe(good);
		expect(() => readICalendar(bad)).toThrow();
	});
});
