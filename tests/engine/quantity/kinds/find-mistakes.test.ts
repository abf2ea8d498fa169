import { expect, test } from 'vitest';
import { angle } from '../../../../src/lib/engine/quantity/kinds/angle.ts';
import { digitsIn } from '../../../../src/lib/engine/quantity/kinds/find-digits.ts';
import {
	carriedRoom,
	roundingIn,
	roundingSays,
	unitSlipIn
} from '../../../../src/lib/engine/quantity/kinds/find-mistakes.ts';
import { length } from '../../../../src/lib/engine/quantity/kinds/length.ts';
import { listOf } from '../../../../src/lib/engine/quantity/kinds/list.ts';
import { rivetLength } from '../../../../src/lib/engine/quantity/kinds/rivet-length.ts';
import { stress } from '../../../../src/lib/engine/quantity/kinds/stress.ts';
import { word } from '../../../../src/lib/engine/quantity/kinds/word.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const lengths = listOf(length);

function entryOf(text: string, kind = length) {
	const reading = kind.read(text);
	if (reading.state !== 'read') throw new Error(`not read: ${text}`);
	return reading;
}

function entriesOf(text: string) {
	const reading = lengths.read(text);
	if (reading.state !== 'read') throw new Error(`not read: ${text}`);
	return reading;
}

// K · (R + T) for 45°, R 0.25 and T 0.064: 0.13006 in.
const setback = 0.130063;

test.each([
	['3.304', 'mm-for-inch'],
	['0.00512', 'inch-for-mm'],
	['130', 'thousandths'],
	['2.081', 'sixteenths']
])('%s is the right length by the slip %s', (text, id) => {
	expect(unitSlipIn(length, entryOf(text), setback)?.id).toBe(id);
});

test('an angle may be in radians, a list all in another unit', () => {
	expect(unitSlipIn(angle, entryOf('0.8', angle), 45)).toBeNull();
	expect(unitSlipIn(angle, entryOf('0.785398', angle), 45)?.id).toBe('radians');
	expect(unitSlipIn(lengths, entriesOf('3.304; 6.608'), [setback, 2 * setback])?.id).toBe(
		'mm-for-inch'
	);
	expect(unitSlipIn(lengths, entriesOf('3.304; 0.26'), [setback, 2 * setback])).toBeNull();
});

test.each([
	['0.1', 0.1301, { how: 'end' }],
	['0.13', 0.1347, { how: 'end' }],
	['1', 1.2049, { how: 'end' }],
	['1/8', 0.1301, { how: 'end', parts: 64 }],
	['3/16', 0.2031, { how: 'end', parts: 32 }],
	['3/16', 0.205, { how: 'end', parts: 16 }],
	['1/4', 0.205, { how: 'end', parts: 8 }],
	['0.137', 0.13779, { how: 'cut' }],
	['0.13', 0.13779, { how: 'cut' }],
	['5 mm', 0.205, { how: 'metric' }],
	['5.5 mm', 0.2137, { how: 'metric' }],
	['5.4 mm', 0.2137, { how: 'metric' }],
	// One digit alone is no match, and what is lost by a third is another value.
	['0.3', 0.39, null],
	['0.2', 0.1301, null],
	['0', 0.4, null],
	['1', 0.7, null],
	['5.1 mm', 0.205, null],
	['4 mm', 0.205, null]
])('%s for %d is rounded: %j', (text, right, how) => {
	expect(roundingIn(length, entryOf(text), right)).toEqual(how);
});

test('every value of a list is rounded alike', () => {
	expect(roundingIn(lengths, entriesOf('0.13; 0.26'), [0.1301, 0.2601])).toEqual({ how: 'end' });
	expect(roundingIn(lengths, entriesOf('0.13; 0.2601'), [0.1301, 0.2601])).toBeNull();
});

test('a zero is no slip of units', () => {
	expect(unitSlipIn(length, entryOf('0'), 0)).toBeNull();
	expect(unitSlipIn(length, entryOf('0.0004'), 0)).toBeNull();
});

test.each([
	['1.301', 'point'],
	['0.310', 'swapped'],
	['0.2', null],
	['1/8', null]
])('%s: digits %s', (text, how) => {
	expect(digitsIn(length, entryOf(text), setback)).toBe(how);
});

test('words have neither units nor digits to go wrong', () => {
	const entry = { value: 'AD', grain: 0 };
	expect(unitSlipIn(word, entry, 'A')).toBeNull();
	expect(roundingIn(word, entry, 'A')).toBeNull();
	expect(digitsIn(word, entry, 'A')).toBeNull();
});

test('a stocked size is not rounded', () => {
	const says = (how: 'end' | 'way' | 'cut' | 'metric', parts?: number) =>
		roundingSays(length, { how, ...(parts !== undefined && { parts }) });
	expect(roundingSays(rivetLength, { how: 'end' })).toBe(
		'Rounded off: give the stocked size itself.'
	);
	expect(says('end')).toBe('Rounded too coarsely: keep thousandths.');
	expect(says('end', 16)).toBe(
		'Rounded to the nearest 1/16 in, which is too coarse here: give it finer.'
	);
	expect(says('way')).toMatch(/^Rounded on the way/);
	expect(says('cut')).toMatch(/^Cut off/);
	expect(says('metric')).toMatch(/^Rounded in millimetres/);
	expect(roundingSays(rivetLength, { how: 'metric' })).toBe(says('metric'));
});

test('half of what a shop carries is the room for rounding on every step', () => {
	expect(carriedRoom(length, 0.001).valueOf()).toBe(0.0005);
	expect(carriedRoom(stress, 0).valueOf()).toBe(0.5);
	// Of a clearance of a few thousandths half of one is much.
	expect(carriedRoom(length, 0.0005).valueOf()).toBe(1e-6);
});
