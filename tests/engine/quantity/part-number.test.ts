import { expect, test } from 'vitest';
import { dashesIn, normalPartNumber } from '../../../src/lib/engine/quantity/part-number.ts';

test.each([
	['MS20470AD4-5', 'MS20470AD4-5'],
	['ms20470ad4-5', 'MS20470AD4-5'],
	['MS20426AD6-6-5', 'MS20426AD6-6.5'],
	['MS20426D6-6 1/2', 'MS20426D6-6.5'],
	['MS20426D6-6-1/2', 'MS20426D6-6.5'],
	['MS20426D6-6½', 'MS20426D6-6.5'],
	[' MS 20470 AD 4 - 5 ', 'MS20470AD4-5'],
	['MS20470.AD4-5', 'MS20470AD4-5'],
	['M.S.20470 AD4-5', 'MS20470AD4-5'],
	['MS20470AD4–5', 'MS20470AD4-5'],
	['MS20470AD4−5', 'MS20470AD4-5'],
	['MS20470AD4‑5', 'MS20470AD4-5'],
	['MS20470-AD4-5', 'MS20470AD4-5'],
	['ＭＳ２０４７０ＡＤ４－５', 'MS20470AD4-5'],
	['MS20470AD4-5.5', 'MS20470AD4-5.5'],
	['MS20470AD4-5.0', 'MS20470AD4-5'],
	['MS20470AD04-05', 'MS20470AD4-5'],
	['MS20426DD6-10', 'MS20426DD6-10'],
	['MS20426A3-4', 'MS20426A3-4'],
	['AN470AD4-5', 'AN470AD4-5'],
	['an 426 b5-6', 'AN426B5-6']
])('%j is %s', (text, number) => {
	expect(normalPartNumber(text)).toBe(number);
});

test.each([
	'',
	'AD4-5',
	'4-5',
	'470AD4-5',
	'MS20470',
	'MS20470AD4',
	'MS20470AD4.5',
	'MS20470AD45',
	'MS20470AD4 5',
	'MS20470AD4-5 5',
	'MS20470AD4-5.25',
	'MS20470AD4-5A',
	'MS20470AD0-5',
	'MS20470AD4-0',
	'MS20 470AD4-5',
	'MS20470ADX4-5',
	'XX20470AD4-5',
	'MS20470AD4-5 MS20470AD4-5',
	'MS20470AD4-5\u0000'
])('%j is no whole part number', (text) => {
	expect(normalPartNumber(text)).toBeNull();
});

test.each([
	['4-5', 4, 5],
	['AD4-5', 4, 5],
	['ad 4-5.5', 4, 5.5],
	['470AD4-5', 4, 5],
	['20470AD4-5', 4, 5],
	['MS20426DD6-10', 6, 10],
	['AN470AD3-4', 3, 4]
])('%j holds −%d and −%d', (text, diameter, length) => {
	expect(dashesIn(text)).toMatchObject({ diameter, length });
});

test.each(['1-5', '13-5', '4 - 5', '4 -5', '4-0', '4', '-5', '4-5-6', '4-5/16', 'in4-5', '100-5'])(
	'%j holds no pair of dash numbers',
	(text) => expect(dashesIn(text)).toBeNull()
);
