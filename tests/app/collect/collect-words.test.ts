import { expect, test } from 'vitest';
import { saysTaken } from '../../../src/lib/app/collect/collect-words.ts';

const cut = { file: 'cut.json', why: 'The hand-in is cut short.' };
const taken = { file: 'B01.json', text: 'B01', hash: '6PMD-ZB44', code: 'B01', version: 1 };

test.each([
	[[], 0, [], 'Nothing new.'],
	[[], 1, [], 'Nothing new. 1 had been taken in before.'],
	[[taken], 0, [], '1 hand-in was taken in.'],
	[[], 0, [cut], 'cut.json is set aside, not marked: the hand-in is cut short.'],
	[
		[taken],
		0,
		[cut, { ...cut, file: 'a.txt' }],
		'1 hand-in was taken in. cut.json and a.txt are set aside, not marked; the list below says why.'
	],
	[
		[taken],
		2,
		['a', 'b', 'c', 'd', 'e'].map((file) => ({ ...cut, file })),
		'1 hand-in was taken in. 2 had been taken in before. 5 files are set aside, not marked; the list below says why.'
	]
])('%j, %i known and %j set aside', (fresh, known, aside, says) => {
	expect(saysTaken(fresh, known, aside)).toBe(says);
});
