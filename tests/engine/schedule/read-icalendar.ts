/*
 * A strict reader for the part of iCalendar that a plan needs, written from the grammar of
 * RFC 5545 (numbers in brackets are its sections). It throws at anything the grammar does not allow.
 */

export interface ReadEvent {
	readonly uid: string;
	readonly stamp: string;
	readonly start: string;
	readonly wholeDay: boolean;
	readonly duration: string | undefined;
	readonly summary: string | undefined;
	readonly description: string | undefined;
}

interface Line {
	readonly name: string;
	readonly params: ReadonlyMap<string, string>;
	readonly value: string;
}

export function readICalendar(text: string): ReadEvent[] {
	const lines = unfolded(text).map(readLine);
	const [begin, ...rest] = lines;
	const end = rest.pop();
	if (!begin || !end) throw new Error('no calendar');
	expectLine(begin, 'BEGIN', 'VCALENDAR');
	expectLine(end, 'END', 'VCALENDAR');
	const firstEvent = rest.findIndex(({ name }) => name === 'BEGIN');
	if (firstEvent < 0) throw new Error('a calendar without a component (3.4)');
	readProperties(rest.slice(0, firstEvent));
	return splitEvents(rest.slice(firstEvent)).map(readEvent);
}

/** Content lines (3.1): CRLF ends each, 75 octets at most, CRLF and a space go on with it. */
function unfolded(text: string): string[] {
	if (!text.endsWith('\r\n')) throw new Error('the last line has no end');
	if (/\r(?!\n)|(?<!\r)\n/.test(text)) throw new Error('a line break that is not CRLF');
	for (const line of text.slice(0, -2).split('\r\n')) {
		const octets = new TextEncoder().encode(line);
		if (octets.length > 75) throw new Error(`${octets.length} octets in a line: ${line}`);
		if (new TextDecoder().decode(octets) !== line) throw new Error(`a split character: ${line}`);
	}
	return text
		.slice(0, -2)
		.replace(/\r\n[ \t]/g, '')
		.split('\r\n');
}

const contentLine =
	/^([A-Za-z0-9-]+)((?:;[A-Za-z0-9-]+=(?:"[^"\p{Cc}]*"|[^";:,\p{Cc}]*))*):((?:[^\p{Cc}]|\t)*)$/u;

function readLine(line: string): Line {
	const found = contentLine.exec(line);
	if (!found) throw new Error(`not a content line: ${JSON.stringify(line)}`);
	const [, name = '', params = '', value = ''] = found;
	const pairs = params
		.split(';')
		.slice(1)
		.map((one) => one.split('='));
	return {
		name: name.toUpperCase(),
		params: new Map(pairs.map(([key = '', of = '']) => [key.toUpperCase(), of])),
		value
	};
}

function expectLine(line: Line, name: string, value: string): void {
	if (line.name !== name || line.value !== value) throw new Error(`no ${name}:${value}`);
}

/** Calendar properties (3.6): PRODID and VERSION, each once. */
function readProperties(lines: readonly Line[]): void {
	const found = onceEach(lines, ['PRODID', 'VERSION'], ['CALSCALE', 'METHOD']);
	if (found.get('VERSION')?.value !== '2.0') throw new Error('not version 2.0');
	readText(found.get('PRODID')?.value ?? '');
}

function splitEvents(lines: readonly Line[]): Line[][] {
	const events: Line[][] = [];
	let open: Line[] | undefined;
	for (const line of lines) {
		if (line.name === 'BEGIN') {
			if (open) throw new Error('an event inside an event');
			expectLine(line, 'BEGIN', 'VEVENT');
			open = [];
		} else if (!open) throw new Error(`${line.name} between events`);
		else if (line.name === 'END') {
			expectLine(line, 'END', 'VEVENT');
			events.push(open);
			open = undefined;
		} else open.push(line);
	}
	if (open) throw new Error('an event that does not end');
	return events;
}

/** An event (3.6.1). DTSTART is required, since the calendar names no METHOD. */
function readEvent(lines: readonly Line[]): ReadEvent {
	const required = ['UID', 'DTSTAMP', 'DTSTART'];
	const found = onceEach(lines, required, ['DURATION', 'SUMMARY', 'DESCRIPTION', 'TRANSP']);
	const text = (name: string) => {
		const line = found.get(name);
		return line && readText(line.value);
	};
	const stamp = found.get('DTSTAMP')?.value ?? '';
	if (!stamp.endsWith('Z')) throw new Error('DTSTAMP is not in UTC (3.8.7.2)');
	readDateTime(stamp.slice(0, -1));
	const start = found.get('DTSTART');
	const wholeDay = start?.params.get('VALUE') === 'DATE';
	if (wholeDay) readDate(start.value);
	else readDateTime(start?.value ?? '');
	const duration = found.get('DURATION')?.value;
	if (duration !== undefined) readDuration(duration, wholeDay);
	const transparency = found.get('TRANSP')?.value ?? 'OPAQUE';
	if (!['OPAQUE', 'TRANSPARENT'].includes(transparency)) throw new Error(transparency);
	return {
		uid: text('UID') ?? '',
		stamp,
		start: start?.value ?? '',
		wholeDay,
		duration,
		summary: text('SUMMARY'),
		description: text('DESCRIPTION')
	};
}

function onceEach(
	lines: readonly Line[],
	required: readonly string[],
	allowed: readonly string[]
): Map<string, Line> {
	const found = new Map<string, Line>();
	for (const line of lines) {
		if (found.has(line.name)) throw new Error(`${line.name} twice`);
		if (![...required, ...allowed].includes(line.name)) throw new Error(`${line.name} here`);
		found.set(line.name, line);
	}
	for (const name of required) if (!found.has(name)) throw new Error(`no ${name}`);
	return found;
}

/** A TEXT value (3.3.11): backslash, semicolon, comma and line breaks only as escapes. */
function readText(value: string): string {
	if (!/^(?:[^\\;,\p{Cc}]|\t|\\[\\;,Nn])*$/u.test(value)) throw new Error(`not TEXT: ${value}`);
	return value.replace(/\\(.)/g, (_, one: string) => (/n/i.test(one) ? '\n' : one));
}

/** A date (3.3.4) that the calendar has. */
function readDate(value: string): void {
	const [, year, month, day] = /^(\d{4})(\d{2})(\d{2})$/.exec(value)?.map(Number) ?? [];
	const date = new Date(Date.UTC(year ?? NaN, (month ?? NaN) - 1, day));
	if (date.getUTCDate() !== day || date.getUTCMonth() + 1 !== month) {
		throw new Error(`not a date: ${value}`);
	}
}

function readDateTime(value: string): void {
	const [date = '', time = ''] = value.split('T');
	readDate(date);
	if (!/^([01]\d|2[0-3])[0-5]\d[0-5]\d$/.test(time)) throw new Error(`not a time: ${value}`);
}

/** A duration (3.3.6) of minutes; of a whole day's event it may only be days or weeks. */
function readDuration(value: string, wholeDay: boolean): void {
	if (wholeDay || !/^PT\d+M$/.test(value)) throw new Error(`not a duration here: ${value}`);
}
