import { describe, expect, test } from 'vitest';
import { ratio } from '../../../../src/lib/engine/quantity/exact.ts';
import { fraction } from '../../../../src/lib/engine/quantity/kinds/fraction.ts';
import type { Known } from '../../../../src/lib/engine/quantity/kinds/kind.ts';
import type { Plan } from '../../../../src/lib/engine/quantity/value.ts';
import { plan } from '../../../../src/lib/engine/quantity/kinds/plan.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const used = (pieces: Plan['parts'][number], kerf: number) =>
	pieces.reduce((sum, { count, size }) => sum + count * (size + kerf), 0) - kerf;

function wantedIn({ wanted }: Known): ReadonlyMap<number, number> {
	if (!(wanted instanceof Map)) throw new Error('no list of pieces');
	return wanted as Map<number, number>;
}

function cutsAll({ parts }: Plan, known: Known): string | null {
	const left = new Map(wantedIn(known));
	for (const { count, size } of parts.flat()) left.set(size, (left.get(size) ?? 0) - count);
	return [...left.values()].every((count) => count === 0)
		? null
		: 'The pieces cut are not the pieces wanted.';
}

/** Pieces out of bars with a kerf between: as few bars as can be. */
const cutList = plan({
	id: 'cut-list',
	noun: 'a cut list',
	part: 'bar',
	size: fraction,
	example: '3x 12 1/4 + 2x 8; 1x 30',
	rules: [
		cutsAll,
		({ parts }, { bar, kerf }) =>
			parts.every((pieces) => used(pieces, Number(kerf)) <= Number(bar) + 1e-9)
				? null
				: 'A bar is too short for its pieces.'
	],
	score: ({ parts }) => parts.length,
	notBest: (score, best) => `It takes ${score} bars; it can be done with ${best}.`
});

const known: Known = {
	bar: 60,
	kerf: 0.125,
	wanted: new Map([
		[12.25, 3],
		[8, 2],
		[30, 1]
	])
};
const right: Plan = {
	parts: [
		[
			{ count: 3, size: 12.25 },
			{ count: 2, size: 8 }
		],
		[{ count: 1, size: 30 }]
	]
};

function judged(text: string) {
	const reading = cutList.read(text);
	if (reading.state !== 'read') throw new Error(`${text}: ${JSON.stringify(reading)}`);
	return cutList.judge(reading, right, ratio(0n), known);
}

describe('a cut list', () => {
	test.each([
		'3x 12 1/4 + 2x 8; 1x 30',
		'30; 2 × 8 + 3 × 12.25',
		'8 + 12 1/4 + 12 1/4 + 8 + 12 1/4\n30 in',
		// Another plan that takes two bars is as good.
		'1x 30 + 2x 12 1/4; 1x 12 1/4 + 2x 8',
		'3 x 311.15 mm + 2 x 8 in; 1x 30'
	])('%s is right', (text) => {
		expect(judged(text)).toEqual({ is: 'right' });
	});

	test('one that holds with a bar more is not the best', () => {
		expect(judged('3x 12 1/4; 2x 8; 1x 30')).toEqual({
			is: 'not-best',
			says: 'It takes 3 bars; it can be done with 2.'
		});
	});

	test.each([
		['3x 12 1/4 + 1x 8; 1x 30', 'The pieces cut are not the pieces wanted.'],
		['3x 12 1/4 + 2x 8 + 1x 30', 'A bar is too short for its pieces.'],
		// 30 + 12 1/4 + 2 × 8 are 58 1/4, and three kerfs; with another 12 1/4 it is too long.
		['1x 30 + 2x 12 1/4 + 1x 8; 1x 12 1/4 + 1x 8', 'A bar is too short for its pieces.']
	])('%s breaks a rule', (text, says) => {
		expect(judged(text)).toEqual({ is: 'breaks', says });
	});

	test.each([
		['3x five', 'Bar 1: Write how many of which size, with + between.'],
		['30; 3x 12 1/4 +', 'Bar 2: Write how many of which size, with + between.'],
		['30; 3x 5 lb', 'Bar 2: Write how many of which size, with + between.']
	])('%s: %s', (text, why) => {
		expect(cutList.read(text)).toEqual({
			state: 'unread',
			why: `${why} Write it like 3x 12 1/4 + 2x 8; 1x 30.`
		});
	});

	test('it is written so that it reads as the same', () => {
		const text = cutList.write(right);
		expect(text).toBe('3 × 12 1/4 + 2 × 8; 1 × 30 in');
		expect(cutList.read(text)).toMatchObject({ state: 'read', value: right, said: text });
	});

	test('in the order of neither bars nor pieces two plans differ', () => {
		const turned = { parts: right.parts.toReversed().map((pieces) => pieces.toReversed()) };
		expect(cutList.differs(right, turned, 0)).toBe(false);
		expect(cutList.differs(right, { parts: right.parts.slice(1) }, 0)).toBe(true);
	});

	test('it is exported as bars of counted sizes', () => {
		expect(cutList.plain(right)).toEqual([
			[
				{ count: 3, of: { number: 12.25, unit: 'in' } },
				{ count: 2, of: { number: 8, unit: 'in' } }
			],
			[{ count: 1, of: { number: 30, unit: 'in' } }]
		]);
	});
});
