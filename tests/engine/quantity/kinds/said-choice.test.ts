import { expect, test } from 'vitest';
import { choice } from '../../../../src/lib/engine/quantity/kinds/choice.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();
const kind = choice(['accept', 'drive more', 'replace']);

/** What an entry is read as; null where it is not. */
function read(typed: string): string | null {
	const reading = kind.read(typed);
	return reading.state === 'read' ? String(reading.value) : null;
}

test.each([
	['accept', 'accept'],
	['Accepted', 'accept'],
	['acceptable', 'accept'],
	['acc', 'accept'],
	['Replace it', 'replace'],
	['replace the rivet', 'replace'],
	['drive it more', 'drive more'],
	['Drive a little more', 'drive more'],
	['drive', 'drive more'],
	['d', 'drive more']
])('%s is read as %s', (typed, wanted) => expect(read(typed)).toBe(wanted));

test.each([
	'reject',
	'do not accept',
	"don't replace",
	'not acceptable',
	'accept or replace',
	'accept, then replace',
	'more'
])('%s is asked about', (typed) => expect(read(typed)).toBeNull());
