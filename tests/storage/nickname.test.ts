import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freeNickname, longestNickname, readNickname } from '../../src/lib/storage/nickname.ts';

describe('a nickname', () => {
	test.each([
		['Sam', 'Sam'],
		['  Sam  ', 'Sam'],
		['Big\t Sam\n', 'Big Sam'],
		['x', 'x'],
		['x'.repeat(30), 'x'.repeat(30)],
		['🔧'.repeat(30), '🔧'.repeat(30)],
		['Jose\u0301', 'José'],
		['S\u200Bam\u202E', 'Sam'],
		['Jose\u200B\u0301', 'José'],
		['Big \u200B Sam', 'Big Sam'],
		['李', '李'],
		['7', '7']
	])('%j is read as %j', (typed, nickname) => {
		expect(readNickname(typed, ['Kit'])).toEqual({ ok: true, nickname });
	});

	test.each([
		['', 'Type a nickname.'],
		['  \u00A0 ', 'Type a nickname.'],
		['\u200B\u2066\u3164', 'Type a nickname.'],
		['x'.repeat(31), 'A nickname has at most 30 characters; shorten it.'],
		['Kit', 'There is a learner called Kit here; choose another name.'],
		[' kIT ', 'There is a learner called Kit here; choose another name.'],
		['Ｋｉｔ', 'There is a learner called Kit here; choose another name.']
	])('%j is refused: %s', (typed, sentence) => {
		expect(readNickname(typed, ['Lee', 'Kit'])).toEqual({ ok: false, sentence });
	});

	test('that was read reads the same again', () => {
		fc.assert(
			fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (typed) => {
				const first = readNickname(typed, []);
				if (first.ok) expect(readNickname(first.nickname, [])).toEqual(first);
			})
		);
	});
});

describe('a nickname out of a file', () => {
	test.each([
		['Sam', [], 'Sam'],
		['Sam', ['sam'], 'Sam 2'],
		['Sam', ['Sam', 'Sam 2'], 'Sam 3'],
		['Sam 2', ['Sam 2'], 'Sam 2 2'],
		['x'.repeat(40), [], 'x'.repeat(30)],
		['x'.repeat(30), ['x'.repeat(30)], `${'x'.repeat(28)} 2`],
		['\u200B', [], 'Learner']
	])('%j beside %j becomes %j', (wanted, taken, nickname) => {
		expect(freeNickname(wanted, taken)).toBe(nickname);
	});

	test('always becomes one that could have been typed', () => {
		const name = fc.string({ unit: 'binary', maxLength: 40 });
		fc.assert(
			fc.property(name, fc.array(name, { maxLength: 5 }), (wanted, others) => {
				const taken = others.reduce<string[]>((all, x) => [...all, freeNickname(x, all)], []);
				const nickname = freeNickname(wanted, [...taken, wanted]);
				expect(readNickname(nickname, taken)).toEqual({ ok: true, nickname });
				expect([...nickname].length).toBeLessThanOrEqual(longestNickname);
			})
		);
	});
});
