import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/lib/engine/quantity/read.ts';
import { type Asked, fields, read } from './corpus.ts';

function readAs<S extends Reading['state']>(
	entry: string,
	expected: Asked,
	state: S
): Extract<Reading, { state: S }> {
	const reading = read(entry, expected);
	expect(reading.state).toBe(state);
	return reading as Extract<Reading, { state: S }>;
}

describe('what is said under the field', () => {
	test.each([
		['rivetLength', '5/16', '5/16 in, a −5 length'],
		['rivetLength', '-5', '5/16 in, a −5 length'],
		['rivetLength', '-5.5', '11/32 in, a −5.5 length'],
		['rivetLength', '17/32', '17/32 in'],
		['rivetLength', '0.3', '0.3 in'],
		['rivetLength', '1/32', '1/32 in'],
		['rivetLength', '-5 (5/16 in)', '5/16 in, a −5 length'],
		['rivetLength', '3/8 (.375)', '3/8 in, a −6 length'],
		['rivetLength', '6 sixteenths', '3/8 in, a −6 length'],
		['rivetLength', '-5.', '5/16 in, a −5 length'],
		['drill', '#30 (.1285)', 'No. 30, 0.1285 in'],
		['drill', '.1285 (#30)', 'No. 30, 0.1285 in'],
		['drill', '#30.', 'No. 30, 0.1285 in'],
		['length', '2.75.', '2.75 in'],
		['lengths', '0.5 & 0.75.', '0.5 in; 0.75 in'],
		['lengths', '1/4 1.05 1 13/16', '1/4 in; 1.05 in; 1 13/16 in'],
		['lengths', '.25 3/4 in', '0.25 in; 3/4 in'],
		['rivetDiameter', 'AD4', '1/8 in, a −4 diameter'],
		['rivetDiameter', '470 AD-4', '1/8 in, a −4 diameter'],
		['rivetLength', '7.9375 mm', '7.9375 mm = 0.3125 in, a −5 length'],
		['rivetDiameter', '3/16', '3/16 in, a −6 diameter'],
		['rivetDiameter', '.1', '0.1 in'],
		['length', '.352', '0.352 in'],
		['length', '.5 d', '0.5 D'],
		['length', '3.5e-2', '0.035 in'],
		['length', '10/16', '5/8 in'],
		['length', '1-1/2"', '1 1/2 in'],
		['length', '12.7 mm', '12.7 mm = 0.5 in'],
		['length', '3 mm', '3 mm ≈ 0.1181 in'],
		['length', '20 thou', '20 thou = 0.02 in'],
		['length', '1\' 2-1/2"', '1 ft 2 1/2 in = 14 1/2 in'],
		['length', '5 32nds', '5/32 in'],
		['length', '1/3', '1/3 in'],
		['length', '1234567/7654321', '≈ 0.161290204579 in'],
		['length', '0.12345678901234', '≈ 0.123456789012 in'],
		['metric', '12.7', '12.7 mm = 0.5 in'],
		['metric', '1/2 in', '1/2 in = 12.7 mm'],
		['metric', '2.54 cm', '2.54 cm = 25.4 mm = 1 in'],
		['drill', '30', 'No. 30, 0.1285 in'],
		['drill', 'f', 'letter F, 0.257 in'],
		['drill', '.1285', '0.1285 in, the No. 30 drill'],
		['drill', '1/8', '1/8 in'],
		['metricDrill', '#30', 'No. 30, 0.1285 in ≈ 3.264 mm'],
		['angle', '45', '45°'],
		['angle', "45° 30'", '45° 30′ = 45.5°'],
		['angle', '1 rad', '1 rad ≈ 57.2958°'],
		['weight', '2.5', '2.5 lb'],
		['weight', '2 lb 8 oz', '2 lb 8 oz = 2.5 lb'],
		['density', '.1', '0.1 lb/in³'],
		['count', '13 rivets', '13'],
		['factor', '3/4', '3/4'],
		['lengths', '10, 20 mm', '10 mm ≈ 0.3937 in; 20 mm ≈ 0.7874 in'],
		['words', ' universal  head ', 'universal head']
	] as const)('%s %s: %s', (field, entry, said) => {
		expect(readAs(entry, fields[field], 'read').said).toBe(said);
	});
});

describe('what was taken for granted', () => {
	test.each([
		['length', '0,5', 'comma taken as the decimal point'],
		['lengths', '0,5; 0,75', 'comma taken as the decimal point'],
		['length', '0·5', 'raised dot taken as the decimal point'],
		['rivetLength', 'MS20470AD4-5', '−5 taken from MS20470AD4-5'],
		['rivetDiameter', 'ad 4-5', '−4 taken from AD4-5'],
		['length', '0.5', undefined],
		['length', '1,250.5', undefined]
	] as const)('%s %s: %s', (field, entry, note) => {
		expect(readAs(entry, fields[field], 'read').note).toBe(note);
	});
});

describe('half of the last place written, in base units', () => {
	test.each([
		['length', '0.35', 0.005],
		['length', '0.350', 0.0005],
		['length', '5', 0.5],
		['length', '5.', 0.5],
		['length', '3.5e-2', 0.0005],
		['length', '1,250.5', 0.05],
		['length', '20 thou', 0.0005],
		['length', '12.7 mm', 0.05 / 25.4],
		['length', '1 ft 2.5 in', 0.05],
		['length', '5/16', 0],
		['length', '1 1/2', 0],
		['length', '#30', 0],
		['metric', '3', 0.5 / 25.4],
		['rivetLength', '-5', 0],
		['rivetLength', '4-5', 0],
		['rivetLength', '7.938 mm (−5)', 0],
		['angle', '45', 0.5],
		['angle', '22.5', 0.05],
		['weight', '8 oz', 0.5 / 16],
		['count', '13', 0],
		['factor', '0.75', 0.005],
		['lengths', '0.5; 0.75; 1/8', 0.05],
		['words', '0.5', 0]
	] as const)('%s %s: %d', (field, entry, grain) => {
		expect(readAs(entry, fields[field], 'read').grain).toBeCloseTo(grain, 12);
	});
});

describe('questions', () => {
	test.each([
		['length', '3,250', 'Do you mean 3250 in, or 3.25 in?'],
		['length', '1 - 1/2', 'Do you mean 1 1/2 in, or 1/2 in?'],
		['rivetLength', '5', 'Do you mean 5/16 in, a −5 length, or 5 in, a −80 length?'],
		['rivetDiameter', '4', 'Do you mean 1/8 in, a −4 diameter, or 4 in?'],
		['angle', '45"', 'Do you mean 45°, or 45″ = 0.0125°?'],
		['angle', "30'", 'Do you mean 30°, or 30′ = 0.5°?'],
		['metric', '1/2', 'Do you mean 1/2 mm ≈ 0.0197 in, or 1/2 in = 12.7 mm?']
	] as const)('%s %s: %s', (field, entry, question) => {
		expect(readAs(entry, fields[field], 'which').question).toBe(question);
	});
});

test('each option of a question has its own grain', () => {
	const { options } = readAs('3,250', fields.length, 'which');
	expect(options.map(({ grain }) => grain)).toEqual([0.5, 0.0005]);
	expect(readAs('5', fields.rivetLength, 'which').options[0]?.grain).toBe(0);
});

describe('what to do about an entry that is not read', () => {
	test.each([
		[
			'length',
			'3 deg',
			'3 deg is an angle; a length is wanted here. Write it like 1/8 in or 0.125.'
		],
		['angle', '1/8 in', '1/8 in is a length; an angle is wanted here. Write it like 45 or 22.5.'],
		['count', '5 lb', '5 lb is a weight; a whole number is wanted here. Write it like 12.'],
		['length', '5 yd', '“yd” is not a unit used here. Write it like 1/8 in or 0.125.'],
		['length', '-5', 'That is a dash number; the size is wanted. Write it like 1/8 in or 0.125.'],
		['length', '-0.5', 'A size is not below zero. Write it like 1/8 in or 0.125.'],
		['length', 'five', 'That does not read as a length. Write it like 1/8 in or 0.125.'],
		['metric', 'five', 'That does not read as a length. Write it like 3.2 mm or 1/8 in.'],
		['drill', '61', 'That does not read as a drill. Write it like No. 30, F or 1/8 in.'],
		['drill', '#61', 'Number drills run from No. 1 to No. 60. Write the size in inches.'],
		['rivetLength', '-4 dia', 'A rivet length is wanted here. Write it like −5 or 5/16 in.'],
		['rivetDiameter', '-5 length', 'A rivet diameter is wanted here. Write it like −4 or 1/8 in.'],
		['rivetLength', '5/16 in (−6)', 'The two values differ. Write only one.'],
		['length', '3/0', 'The bottom of a fraction cannot be zero. Write it like 3/8.'],
		['length', '1 5/4', 'The fraction after a whole number is less than one. Write it like 1 1/2.'],
		['length', '1e9', 'That is too large. Check the decimal point and the unit.'],
		['count', '12.5', 'A whole number is wanted here. Write it like 12.'],
		['length', '0,5+1', 'In a sum write decimals with a point, like 0.5 + 0.25.'],
		[
			'length',
			'5\u0000',
			'The entry holds characters that cannot be seen. Clear it and type it again.'
		],
		['length', '1'.repeat(201), 'That is over 200 characters. Write it like 1/8 in or 0.125.'],
		['lengths', '0,5', 'Separate the values with semicolons.'],
		[
			'lengths',
			'1; two',
			'Value 2: That does not read as a length. Write it like 1/8 in or 0.125.'
		],
		['lengths', '1;;2', 'Value 2: Write a value between every two semicolons.'],
		['lengths', '1; 3,250', 'Value 2: Write which you mean, 3250 in, or 3.25 in.'],
		['lengths', '1 in, 2, 3 mm', 'Give every value its unit, or only the last one for all.']
	] as const)('%s %j: %s', (field, entry, why) => {
		expect(readAs(entry, fields[field], 'unread').why).toBe(why);
	});
});

test('200 characters are read, 201 are not', () => {
	expect(read(' '.repeat(197) + '1/8', fields.length).state).toBe('read');
	expect(read(' '.repeat(198) + '1/8', fields.length).state).toBe('unread');
});

test('arithmetic is left to readArithmetic', () => {
	expect(read('.032 + .040', fields.length)).toEqual({ state: 'arithmetic', text: '.032 + .040' });
});
