import fc from 'fast-check';
import { cardByCode } from '../../../src/lib/engine/families/catalogue.ts';
import { describe, expect, test } from 'vitest';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { type Card, cards } from '../../../src/lib/engine/families/topics.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import {
	readTaskNumber,
	seedCount,
	TaskNumberError,
	writeTaskNumber
} from '../../../src/lib/engine/tasks/task-number.ts';

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const code = fc
	.tuple(fc.constantFrom(...letters), fc.constantFrom(...letters))
	.map(([one, two]) => one + two);
const id = fc.record({
	code,
	level: fc.constantFrom(...levels),
	seed: fc.integer({ min: 0, max: seedCount - 1 }),
	rev: fc.integer({ min: 0, max: 31 })
});

function problem(typed: string): string | null {
	try {
		readTaskNumber(typed);
		return null;
	} catch (error) {
		if (error instanceof TaskNumberError) return error.message;
		throw error;
	}
}

test('a number is read as it was written, however it is typed', () => {
	fc.assert(
		fc.property(id, (one) => {
			const number = writeTaskNumber(one);
			expect(number).toMatch(/^[A-Z]{2}[1-3]-[0-9A-Z]{4}-[0-9A-Z]{2}$/);
			expect(readTaskNumber(number)).toEqual(one);
			expect(readTaskNumber(number.toLowerCase().replaceAll('-', ' '))).toEqual(one);
			expect(readTaskNumber(` ${number.replaceAll('-', '–')} `)).toEqual(one);
			const loose = number.slice(4).replaceAll('0', 'o').replaceAll('1', 'l');
			expect(readTaskNumber(number.slice(0, 4) + loose)).toEqual(one);
		})
	);
});

test('any one wrong character is found', () => {
	fc.assert(
		fc.property(
			id,
			fc.nat(10),
			fc.constantFrom(...'0123456789ABCDEFGHJKMNPQRSTVWXYZ'),
			(one, at, char) => {
				const number = writeTaskNumber(one);
				const wrong = number.slice(0, at) + char + number.slice(at + 1);
				const plain = (text: string) => text.replaceAll('-', '');
				if (number[at] === '-' || plain(wrong) === plain(number)) return;
				expect(problem(wrong), wrong).not.toBeNull();
			}
		)
	);
});

test('no text throws anything but a sentence', () => {
	fc.assert(
		fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
			const said = problem(text);
			if (said !== null) expect(said).toMatch(/^[A-Z].*[.]$/);
		})
	);
	expect(problem('x'.repeat(10_000))).toContain('That is not a task number');
});

describe('a number that cannot be drawn', () => {
	const sound = { code: 'RL', level: 1, seed: 4, rev: cardByCode('RL')?.rev ?? 0 } as const;

	test.each([
		['an unknown family', { ...sound, code: 'ZZ' }, 'No family of tasks has the code ZZ.'],
		['an older revision', { ...sound, rev: 0 }, 'That number is of revision 0'],
		['a newer revision', { ...sound, rev: 31 }, 'newer than this copy of Bucktail']
	])('%s', async (_, of, says) => {
		await expect(taskFromNumber(writeTaskNumber(of))).rejects.toThrow(says);
	});

	test('a sound one is drawn', async () => {
		expect((await taskFromNumber(writeTaskNumber(sound))).family.id).toBe('rivet-length');
	});
});

describe('a number that has no room', () => {
	const room = (card: Pick<Card, 'code' | 'rev'>, seed = seedCount - 1) => {
		for (const level of levels) {
			const one = { code: card.code, rev: card.rev, level, seed };
			expect(readTaskNumber(writeTaskNumber(one))).toEqual(one);
		}
	};

	test.each(cards.map((card) => [card.code, card] as const))('is not needed for %s', (_, card) => {
		room(card);
	});

	test.each([32, -1, 1.5, NaN])('for revision %d is not written', (rev) => {
		expect(() => room({ code: 'QQ', rev })).toThrow(
			`family QQ: a task number holds a revision from 0 to 31, not ${rev}`
		);
	});

	test.each([seedCount, -1, 0.5, Infinity])('for seed %d is not written', (seed) => {
		expect(() => room({ code: 'QQ', rev: 1 }, seed)).toThrow(
			`family QQ: a task number holds a seed from 0 to 1048575, not ${seed}`
		);
	});
});
