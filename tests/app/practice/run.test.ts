import { expect, test } from 'vitest';
import { nameOf, type RunTask } from '../../../src/lib/app/practice/run.ts';

const task = (number: string): RunTask => ({ number, standing: 'open' });

test('a run that a task of another topic joined is mixed, from the first sight of it', () => {
	const rivets = task('RL1-014T-7R');
	expect(nameOf({ topic: 'rivets', tasks: [rivets] })).toBe('Rivets');
	expect(nameOf({ topic: 'rivets', tasks: [rivets, task('BA3-0007-5N')] })).toBe('Mixed');
	expect(nameOf({ topic: 'plan', tasks: [rivets] })).toBe('Today’s tasks');
});
