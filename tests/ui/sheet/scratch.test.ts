import { expect, test } from 'vitest';
import { workScratch } from '../../../src/lib/ui/sheet/scratch.ts';

test.each([
	['.25+.063=', '0.313'],
	['2 x .5 =', '1'],
	['1/4 in + 1/16 in =', '0.3125 in']
])('%s is worked, with the = of a calculator at its end', async (typed, result) => {
	expect(await workScratch(typed, 'in')).toEqual({ typed, result, problem: '' });
});

test('a = inside a line is not passed over', async () => {
	expect((await workScratch('1=2', 'in')).problem).not.toBe('');
});

test.each(['.040+', '2 × ', '.04 in −', '3/ ='])('%s still wants a number', async (typed) => {
	expect(await workScratch(typed, 'in')).toEqual({
		typed,
		result: '',
		problem: 'Write a number after the sign.'
	});
});

test.each([
	['2D+1', 'D'],
	['3t', 'T'],
	['R + .063', 'R']
])('%s is told which number is wanted', async (typed, letter) => {
	expect(await workScratch(typed, 'in')).toEqual({
		typed,
		result: '',
		problem: `In place of ${letter} write its number.`
	});
});
