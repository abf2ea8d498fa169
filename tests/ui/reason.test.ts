import { describe, expect, test } from 'vitest';
import { dayOf } from '../../src/lib/engine/schedule/day.ts';
import type { Reason } from '../../src/lib/engine/schedule/run.ts';
import { dayWords, sayReason } from '../../src/lib/ui/reason.ts';

/** A Wednesday. */
const today = dayOf('2026-12-02');
const skill = 'rivet-length/shank';
const slip = 'The shank for the shop head was left out.';

function said(reason: Reason, worked = false, says = ''): string {
	return sayReason({ reason, worked }, 'Shank', says, today);
}

describe('why a task is in the run', () => {
	test.each<[string, Reason, boolean, string, string]>([
		[
			'a miss, with its slip',
			{ kind: 'missed', skill, day: today - 2 },
			false,
			slip,
			`You missed “Shank” on Monday. ${slip}`
		],
		[
			'a miss of unknown cause',
			{ kind: 'missed', skill, day: today - 1 },
			false,
			'',
			'You missed “Shank” yesterday.'
		],
		[
			'a miss beside something new',
			{ kind: 'missed', skill, day: today - 1 },
			true,
			slip,
			`You missed “Shank” yesterday. ${slip} Another step here is new. First one is worked for you.`
		],
		[
			'a first meeting',
			{ kind: 'new', skill },
			true,
			'',
			'“Shank” is new. First one is worked for you.'
		],
		['new, but its kind is known', { kind: 'new', skill }, false, '', '“Shank” is new.'],
		['a topic picked by hand', { kind: 'chosen', skill }, false, '', 'You chose this topic.'],
		[
			'the last days',
			{ kind: 'sweep', skill, exam: today + 1 },
			false,
			'',
			'A last look at “Shank” before the exam tomorrow.'
		]
	])('%s', (_, reason, worked, says, words) => {
		expect(said(reason, worked, says)).toBe(words);
	});
});

test('a day is told by its nearest name', () => {
	const words = [-7, -6, -1, 0, 1, 6, 7].map((days) => dayWords(today + days, today));
	expect(words).toEqual([
		'on 25 Nov',
		'on Thursday',
		'yesterday',
		'today',
		'tomorrow',
		'on Tuesday',
		'on 9 Dec'
	]);
});
