import { expect, test } from 'vitest';
import { calibrate, type ScoredAnswer } from '../../../src/lib/engine/schedule/calibration.ts';
import { trustWords, waitWords } from '../../../src/lib/ui/progress/trust.ts';

let checks = 0;

/** Answers at one expectation, so many of them right. */
function answers(expected: number, count: number, right: number): ScoredAnswer[] {
	return Array.from({ length: count }, (_, i) => ({ expected, right: i < right, check: ++checks }));
}

test('expectations that came true are told with their grounds', () => {
	const words = trustWords(calibrate([...answers(0.82, 100, 79), ...answers(0.2, 50, 11)]));
	expect(words).toEqual([
		'So far these numbers tell more about your answers than your plain average does.',
		'When Bucktail expected about 82\u00a0%, you got 79\u00a0%. Looked at: 150 first answers on steps met before.',
		'Log loss, a penalty for misplaced confidence: 0.521. Always saying your average, 60\u00a0%, would cost 0.673. Lower is better, and the average has a head start: it is known only afterwards.',
		'AUC 0.76: of one answer you got right and one you did not, Bucktail had expected more of the right one 76 times in 100. Guessing gives 50.'
	]);
});

test('it is said when the average would have done as well, or better', () => {
	const even = [...answers(0.62, 50, 31), ...answers(0.58, 50, 29)];
	expect(trustWords(calibrate(even))[0]).toContain('no better than your plain average');
	const worse = [...answers(0.9, 100, 30), ...answers(0.3, 100, 90)];
	expect(trustWords(calibrate(worse))[0]).toContain('average would have been closer');
});

test('where all came out alike, there is nothing to tell apart', () => {
	expect(trustWords(calibrate(answers(0.8, 60, 60)))[3]).toContain('nothing to tell apart yet');
});

test.each([
	[0, '60 more first answers'],
	[59, '1 more first answer on']
])('after %i answers the missing ones are told', (count, words) => {
	expect(waitWords(count)).toContain(words);
});
