import { expect, test } from 'vitest';
import { plainTerms } from '../../../src/lib/engine/sets/compose.ts';
import { termsAgain, wishesFor } from '../../../src/lib/engine/sets/follow-up.ts';

const kind = (id: string, ...skills: string[]) => ({
	id,
	family: id.slice(0, 2),
	aim: skills.at(-1) ?? '',
	skills
});

/** Easy ones first, as in the real one. */
const syllabus = {
	skills: [],
	kinds: [
		kind('RL1', 'piece/grip', 'piece/length'),
		kind('ED1', 'edge/least'),
		kind('RL2', 'piece/grip', 'piece/length'),
		kind('LR2', 'row/run', 'row/pitch'),
		kind('RL3', 'piece/grip', 'piece/length')
	]
};

test('what was missed is practised twice, by the easiest kinds that aim at it', () => {
	const wishes = wishesFor(syllabus, ['piece/length', 'edge/least', 'row/run', 'gone/step']);
	expect(wishes.map(({ code, level, count }) => `${code}${level}*${count}`)).toEqual([
		'RL1*1',
		'RL2*1',
		'ED1*2',
		'LR2*2'
	]);
	expect(wishesFor(syllabus, ['piece/length', 'piece/grip'])).toMatchObject([
		{ code: 'RL', level: 1, count: 2 },
		{ code: 'RL', level: 2, count: 2 }
	]);
	expect(wishesFor(syllabus, [])).toEqual([]);
});

test('a follow-up keeps the terms of the set it follows, and none of its dates', () => {
	const before = { ...plainTerms('Week 6'), help: false, due: '2026-12-04', note: 'Run first.' };
	expect(termsAgain({ ...before, tasks: [] })).toEqual({
		...before,
		title: 'Week 6: again',
		seed: 'Week 6: again',
		due: null
	});
	expect(termsAgain(null).title).toBe('What the class missed');
});
