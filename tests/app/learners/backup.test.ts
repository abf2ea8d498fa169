import { describe, expect, test } from 'vitest';
import { backupName, restoredWords } from '../../../src/lib/app/learners/backup.ts';

describe('the name of a backup file', () => {
	test.each([
		['Sam', 'bucktail-sam-2026-03-09.json'],
		['Sam the 2nd', 'bucktail-sam-the-2nd-2026-03-09.json'],
		['Żółw', 'bucktail-żółw-2026-03-09.json'],
		['a/b\\c:d*?"<>|', 'bucktail-a-b-c-d-2026-03-09.json'],
		['../..', 'bucktail-learner-2026-03-09.json'],
		[null, 'bucktail-everyone-2026-03-09.json']
	])('of %s is %s', (nickname, name) => {
		expect(backupName(nickname, '2026-03-09')).toBe(name);
	});
});

describe('what a restore did, in words', () => {
	test.each([
		[1, 58, 54, '58 records were new, 54 records were here already. 1 learner was added.'],
		[0, 1, 0, '1 record was new.'],
		[0, 0, 1, 'Nothing was new: 1 record was here already.'],
		[2, 9, 0, '9 records were new. 2 learners were added.']
	])('%i learners, %i records new, %i known', (learnersNew, eventsNew, eventsKnown, words) => {
		expect(restoredWords({ learnersNew, eventsNew, eventsKnown })).toBe(words);
	});
});
