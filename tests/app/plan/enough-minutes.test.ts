import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { enoughMinutes } from '../../../src/lib/app/plan/enough-minutes.ts';

const always = async () => true;

describe('the minutes that are enough', () => {
	test('are the least multiple of five over what is set that reaches everything', async () => {
		const cases = fc.tuple(fc.integer({ min: 5, max: 239 }), fc.integer({ min: 6, max: 240 }));
		await fc.assert(
			fc.asyncProperty(cases, async ([from, needed]) => {
				fc.pre(needed > from);
				const found = await enoughMinutes(from, (minutes) => minutes >= needed, always);
				expect(found).toBe(Math.ceil(needed / 5) * 5);
			})
		);
	});

	test.each([5, 120, 238, 240])(
		'are not to be had when 240 do not do, from %i on',
		async (from) => {
			expect(await enoughMinutes(from, () => false, always)).toBeNull();
		}
	);

	test('are found in few tries, the long ones only when they are needed', async () => {
		const tried: number[] = [];
		const reaches = (minutes: number) => {
			tried.push(minutes);
			return minutes >= 35;
		};
		expect(await enoughMinutes(10, reaches, always)).toBe(35);
		expect(tried.length).toBeLessThanOrEqual(6);
		expect(Math.max(...tried)).toBeLessThan(70);
	});

	test('are sought no longer once they are not wanted', async () => {
		let tries = 0;
		const reaches = () => {
			tries++;
			return false;
		};
		await enoughMinutes(5, reaches, async () => tries < 2);
		expect(tries).toBe(2);
	});
});
