import { describe, expect, test } from 'vitest';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { shown } from './in-words.ts';
import { shelfTask } from './shelf.ts';
import { entriesOf } from './typed-answers.ts';

type Typed = Readonly<Record<string, string>>;

describe('what is known besides', () => {
	const marks = (typed: Typed, evidence: Parameters<typeof mark>[2]) => {
		const verdicts = mark(shelfTask, entriesOf(shelfTask, typed), evidence);
		return Object.fromEntries(Object.entries(verdicts).map(([key, one]) => [key, shown(one)]));
	};

	// A pitch of 1.5833: divided by the holes, or one space too many.
	test('alone, two slips fit', () => {
		expect(marks({ pitch: '1.5833' }, {})).toEqual({ pitch: 'either more / byHoles' });
	});

	test('no slip was made in a step that had been shown', () => {
		expect(marks({ pitch: '1.5833' }, { opened: ['run'] })).toEqual({
			pitch: 'either more / byHoles'
		});
		expect(marks({ pitch: '1.5833' }, { opened: ['run', 'spaces'] })).toEqual({
			pitch: 'slip byHoles'
		});
	});

	test('nor was one of two made there', () => {
		// Both margins taken once, and four spaces: 9.9 / 4.
		expect(marks({ pitch: '2.475' }, {})).toEqual({ pitch: 'slip oneMargin+down' });
		expect(marks({ pitch: '2.475' }, { opened: ['run'] })).toEqual({ pitch: 'unknown' });
		expect(marks({ pitch: '2.475' }, { opened: ['spaces'] })).toEqual({ pitch: 'unknown' });
	});

	test('a slip that somebody says to have made is it', () => {
		expect(marks({ pitch: '1.5833' }, { told: ['more'] })).toEqual({ pitch: 'slip more' });
	});

	test('an entry of an earlier check speaks too, unless it was typed anew', () => {
		const earlier = [entriesOf(shelfTask, { spaces: '5' })];
		expect(marks({ pitch: '1.5833' }, { earlier })).toEqual({ pitch: 'slip byHoles' });
		const wrong = [entriesOf(shelfTask, { spaces: '6' })];
		expect(marks({ pitch: '1.5833' }, { earlier: wrong })).toEqual({ pitch: 'slip more' });
		expect(marks({ pitch: '1.5833' }, { earlier: [...wrong, ...earlier] })).toEqual({
			pitch: 'slip byHoles'
		});
		const again = [entriesOf(shelfTask, { pitch: '1.9' })];
		expect(marks({ pitch: '1.5833' }, { earlier: again })).toEqual({
			pitch: 'either more / byHoles'
		});
	});
});
