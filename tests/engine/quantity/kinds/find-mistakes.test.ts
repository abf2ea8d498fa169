import { expect, test } from 'vitest';
import { angle } from '../../../../src/lib/engine/quantity/kinds/angle.ts';
import {
	carriedRoom,
	digitsIn,
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
	expect(unitSlipIn(angle, entryOf('0.785', angle), 45)).toBeNull();
	expect(unitSlipIn(angle, entryOf('0.785398', angle), 45)?.id).toBe('radians');
	expect(unitSlipIn(lengths, entriesOf('3.304; 6.608'), [setback, 2 * setback])?.id).toBe(
		'mm-for-inch'
	);
	expect(unitSlipIn(lengths, entriesOf('3.304; 0.26'), [setback, 2 * setback])).toBeNull();
});

test.each([
	['0.1', 0.1301, 'end'],
	['0.13', 0.1347, 'end'],
	['1/8', 0.1301, 'end'],
	['0.137', 0.13779, 'cut'],
	['0.2', 0.1301, null]
])('%s for %d is rounded: %s', (text, right, how) => {
	expect(roundingIn(length, entryOf(text), right)).toBe(how);
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
	expect(roundingSays(rivetLength, 'end')).toBe('Rounded off: give the stocked size itself.');
	expect(roundingSays(length, 'end')).toBe('Rounded too coarsely: keep thousandths.');
});

test('half of what a shop carries is the room for rounding on every step', () => {
	expect(carriedRoom(length).valueOf()).toBe(0.0005);
	expect(carriedRoom(stress).valueOf()).toBe(0.5);
});
