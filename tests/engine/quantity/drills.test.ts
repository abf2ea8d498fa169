import { describe, expect, test } from 'vitest';
import {
	drillName,
	drillSize,
	letterDrill,
	numberDrill
} from '../../../src/lib/engine/quantity/drills.ts';
import { ratio } from '../../../src/lib/engine/quantity/exact.ts';

const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
const numbers = Array.from({ length: 60 }, (_, i) => i + 1);

// Rows read off FAA-H-8083-31B, Fig. 4-47, p. 4-18: first, last and those used for rivets.
describe('drill sizes', () => {
	test.each([
		['No. 1', 2280],
		['No. 11', 1910],
		['No. 20', 1610],
		['No. 21', 1590],
		['No. 30', 1285],
		['No. 31', 1200],
		['No. 40', 980],
		['No. 41', 960],
		['No. 51', 670],
		['No. 60', 400],
		['letter A', 2340],
		['letter E', 2500],
		['letter F', 2570],
		['letter P', 3230],
		['letter Z', 4130],
		['1/8', 1250],
		['5/32', 1562.5],
		['1/64', 156.25]
	])('%s is %d ten-thousandths', (name, size) => {
		expect(drillSize(name)?.equals(ratio(BigInt(size * 4), 40_000n))).toBe(true);
	});

	test.each(['30', '#30', '# 30', 'no. 30', 'No 30'])('%s names the No. 30', (name) => {
		expect(drillSize(name)?.valueOf()).toBe(0.1285);
	});

	test.each(['', '0', '61', 'No. 61', 'AA', '5/0', '0/8', '5/7', '9/8', '1.5', 'constructor'])(
		'no drill is called %j',
		(name) => expect(drillSize(name)).toBeNull()
	);

	test('they fall from No. 1 to No. 60 and rise from A to Z', () => {
		const falling = numbers.map((number) => numberDrill(number)?.valueOf() ?? NaN);
		const rising = letters.map((letter) => letterDrill(letter)?.valueOf() ?? NaN);
		expect(falling).toEqual([...falling].sort((a, b) => b - a));
		expect(rising).toEqual([...rising].sort((a, b) => a - b));
		expect(new Set([...falling, ...rising]).size).toBe(86);
	});
});

test('every drill is called by its size, the letter E by its fraction', () => {
	for (const number of numbers) {
		expect(drillName(drillSize(`${number}`) ?? NaN)).toBe(`No. ${number}`);
	}
	for (const letter of letters) {
		expect(drillName(drillSize(letter) ?? NaN)).toBe(letter === 'E' ? '1/4' : `letter ${letter}`);
	}
	for (let parts = 1; parts < 64; parts++) {
		const size = ratio(BigInt(parts), 64n);
		expect(drillSize(drillName(size) ?? '')?.equals(size)).toBe(true);
	}
});

test.each([0, -0.125, 0.1286, 0.13, 1, 1.125])('no drill measures %d in', (size) => {
	expect(drillName(size)).toBeNull();
});
