import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	calibrate,
	type ScoredAnswer,
	worth
} from '../../../src/lib/engine/schedule/calibration.ts';

/** Expectations are few, so that ties happen. */
const someAnswers = fc.array(
	fc.record({
		expected: fc.oneof(
			fc.constantFrom(0, 0.2, 0.5, 0.8, 1),
			fc.double({ min: 0, max: 1, noNaN: true })
		),
		right: fc.boolean(),
		check: fc.nat(5)
	}),
	{ minLength: 1, maxLength: 40 }
);

function answer(expected: number, right: boolean, check = 0): ScoredAnswer {
	return { expected, right, check };
}

/** Many answers at one expectation, so many of them right; each a check of its own. */
function answers(expected: number, count: number, right: number): ScoredAnswer[] {
	return Array.from({ length: count }, (_, i) => answer(expected, i < right, expected * 1e4 + i));
}

test('the area under the curve is the share of pairs in which the right one was expected more', () => {
	fc.assert(
		fc.property(someAnswers, (list) => {
			let [pairs, wins] = [0, 0];
			for (const one of list.filter(({ right }) => right)) {
				for (const other of list.filter(({ right }) => !right)) {
					pairs++;
					if (one.expected > other.expected) wins++;
					else if (one.expected === other.expected) wins += 0.5;
				}
			}
			const { auc } = calibrate(list);
			if (pairs === 0) expect(auc).toBeNull();
			else expect(auc).toBeCloseTo(wins / pairs, 12);
		})
	);
});

test('the log loss of two answers, by hand', () => {
	const { loss, baseline, average } = calibrate([answer(0.8, true), answer(0.4, false, 1)]);
	expect(average).toBe(0.5);
	expect(loss).toBeCloseTo((Math.log(1 / 0.8) + Math.log(1 / 0.6)) / 2, 12);
	expect(baseline).toBeCloseTo(Math.LN2, 12);
});

test('an answer that was out of the question has a finite loss', () => {
	expect(calibrate([answer(0, true)]).loss).toBeCloseTo(Math.log(1000), 9);
	expect(calibrate([answer(1, false)]).loss).toBeCloseTo(Math.log(1000), 9);
});

test('no constant does better than the baseline', () => {
	fc.assert(
		fc.property(someAnswers, fc.double({ min: 0, max: 1, noNaN: true }), (list, constant) => {
			const same = list.map((one) => ({ ...one, expected: constant }));
			const { loss, baseline } = calibrate(same);
			// Near 0 and 1 both are cut off at the same place.
			expect(baseline).toBeLessThanOrEqual(loss + 1e-12);
		})
	);
});

test('the bands hold every answer once, where its expectation lies', () => {
	fc.assert(
		fc.property(someAnswers, (list) => {
			const { bands, count, average } = calibrate(list);
			expect(count).toBe(list.length);
			expect(bands.reduce((sum, band) => sum + band.count, 0)).toBe(list.length);
			const right = bands.reduce((sum, band) => sum + band.right * band.count, 0);
			expect(right / count).toBeCloseTo(average, 9);
			for (const { from, to, expected } of bands) {
				expect(expected).toBeGreaterThanOrEqual(from - 1e-9);
				expect(expected).toBeLessThanOrEqual(to + 1e-9);
			}
		})
	);
});

test('expectations that come true are worth more than the average', () => {
	const list = [...answers(0.9, 100, 90), ...answers(0.3, 100, 30)];
	expect(worth(calibrate(list))).toBe('better');
});

test('expectations that are the wrong way round are worth less', () => {
	const list = [...answers(0.9, 100, 30), ...answers(0.3, 100, 90)];
	expect(worth(calibrate(list))).toBe('worse');
});

test('expectations that differ by chance alone are worth the same', () => {
	const list = [...answers(0.62, 50, 31), ...answers(0.58, 50, 29)];
	expect(worth(calibrate(list))).toBe('even');
});

test('the answers of one check count as one observation', () => {
	const apart = [...answers(0.9, 30, 27), ...answers(0.4, 30, 12)];
	const twice = apart.flatMap((one) => [one, one]);
	const [once, doubled] = [calibrate(apart), calibrate(twice)];
	expect(once.error).toBeGreaterThan(0);
	expect(doubled.error).toBeCloseTo(once.error, 12);
	const asIfApart = calibrate(twice.map((one, i) => ({ ...one, check: i })));
	expect(asIfApart.error).toBeCloseTo(once.error / Math.SQRT2, 12);
});
