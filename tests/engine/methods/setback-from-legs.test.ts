import { expect, test } from 'vitest';
import { setbackFromLegs } from '../../../src/lib/engine/methods/setback-from-legs.ts';
import { setback } from '../../../src/lib/engine/methods/setback.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

test.each([
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-73, Fig. 4-147 (published): legs 135° apart, an open bend of 45°',
		given: { R: 0.1875, T: 0.05, betweenLegs: 135 },
		angle: 45,
		SB: 0.098
	},
	{
		from: 'FAA-H-8083-31B ch. 4 pp. 4-64, 4-66 (rule application): legs 60° apart, a closed bend of 120°',
		given: { R: 0.19, T: 0.05, betweenLegs: 60 },
		angle: 120,
		SB: 0.4157
	},
	{
		from: 'FAA-H-8083-31B ch. 4 p. 4-63 (published): square legs',
		given: { R: 0.16, T: 0.04, betweenLegs: 90 },
		angle: 90,
		SB: 0.2
	}
])('$from', ({ given, angle, SB }) => {
	const values = evaluate(setbackFromLegs, given);
	expect(values.angle).toBe(angle);
	expect(Math.abs(Number(values.setback) - SB)).toBeLessThan(0.0006);
});

test('an angle and what is left of 180° have K that multiply to 1', () => {
	for (let betweenLegs = 5; betweenLegs <= 175; betweenLegs += 5) {
		const K = Number(evaluate(setbackFromLegs, { R: 0.1, T: 0.05, betweenLegs }).K);
		const other = Number(evaluate(setback, { R: 0.1, T: 0.05, angle: betweenLegs }).K);
		expect(K * other).toBeCloseTo(1, 6);
	}
});

test('the angle between the legs taken for the bend angle makes an open bend closed', () => {
	const given = { R: 0.1875, T: 0.05, betweenLegs: 135 };
	const slipped = evaluate(setbackFromLegs, given, { slips: { angle: 'legs' } });
	expect(slipped.setback).toBeCloseTo(2.414214 * 0.2375, 5);
});

test.each([
	[0, 'A bend of 180° has no setback'],
	[180, 'lies between 0° and 180°'],
	[190, 'lies between 0° and 180°']
])('legs %d° apart have no setback', (betweenLegs, says) => {
	expect(() => evaluate(setbackFromLegs, { R: 0.1, T: 0.04, betweenLegs })).toThrow(says);
});
