import { expect, test } from 'vitest';
import { mixOf } from '../../../src/lib/app/home/today-view.ts';

type Work = Parameters<typeof mixOf>[0];

/** A day's work by the reason of each task, and whether a new step is worked before it. */
const workOf = (...tasks: [kind: string, worked: boolean][]): Work =>
	tasks.map(([kind, worked]) => ({ reason: { kind }, worked })) as unknown as Work;

test('the numbers of a day add up to its tasks', () => {
	const back = mixOf(workOf(['missed', true], ['missed', false], ['new', true], ['due', true]));
	expect(back).toBe('Two come back, two have a new step.');
	expect(mixOf(workOf(['missed', true]))).toBe('One comes back.');
	expect(mixOf(workOf(['due', false], ['new', false], ['due', false]))).toBe(
		'One has a new step, two keep what you know.'
	);
	expect(mixOf([])).toBe('');
});
