import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	longestNote,
	longestTyped,
	mostChecks,
	type Question,
	readQuestion,
	writeQuestion
} from '../../../src/lib/app/ask/ask-link.ts';
import { packed } from '../../../src/lib/exchange/fragment.ts';
import firstLinks from './first-edition-links.json';

const key = fc.stringMatching(/^[a-z][A-Za-z0-9]{0,11}$/);
const typed = fc.dictionary(key, fc.string({ maxLength: longestTyped, unit: 'binary' }), {
	maxKeys: 6,
	noNullPrototype: true
});
const count = fc.integer({ min: 0, max: 99 });
const units = fc.constantFrom('in' as const, 'mm' as const);
const questions: fc.Arbitrary<Question> = fc.record({
	task: fc.constantFrom('RL2-7Q4K-21', 'EM1-0000-1A'),
	units,
	opened: count,
	byStep: fc.boolean(),
	worked: fc.boolean(),
	before: count,
	checks: fc.array(
		fc.record({
			typed,
			picked: fc.dictionary(key, count, { maxKeys: 6, noNullPrototype: true }),
			units,
			opened: count,
			byStep: fc.boolean()
		}),
		{ maxLength: mostChecks }
	),
	open: typed,
	note: fc.string({ maxLength: longestNote, unit: 'binary' })
});

const damaged =
	'That link is damaged or cut short; ask for it to be copied and sent again.' as const;

describe('a question as a link', () => {
	test('reads back as it was written, with or without the mark before it', async () => {
		await fc.assert(
			fc.asyncProperty(questions, async (question) => {
				const fragment = await writeQuestion(question);
				expect(await readQuestion(fragment)).toEqual({ ok: true, question });
				expect(await readQuestion(`#${fragment}`)).toEqual({ ok: true, question });
			})
		);
	});

	test('holds only letters that no messenger changes', async () => {
		await fc.assert(
			fc.asyncProperty(questions, async (question) => {
				expect(await writeQuestion(question)).toMatch(/^2\.z\.[\w-]+$/);
			})
		);
	});

	test('of an everyday length fits a text message of 500 characters', async () => {
		const question: Question = {
			task: 'RL2-7Q4K-21',
			units: 'in',
			opened: 1,
			byStep: false,
			worked: false,
			before: 0,
			checks: [
				{ typed: { length: '-3' }, picked: {}, units: 'in', opened: 0, byStep: false },
				{ typed: { length: '5' }, picked: { length: 1 }, units: 'in', opened: 1, byStep: false }
			],
			open: {},
			note: 'Why is the shank added to the grip and not taken off? My list says otherwise.'
		};
		expect((await writeQuestion(question)).length).toBeLessThan(400);
	});
});

test.each(firstLinks)('a link of the first edition opens: $question.note', async (link) => {
	expect(await readQuestion(link.fragment)).toEqual({ ok: true, question: link.question });
});

describe('a hostile link', () => {
	const refused = async (fragment: string) => {
		expect(await readQuestion(fragment)).toEqual({ ok: false, sentence: damaged });
	};

	test('of any text is refused with one sentence', async () => {
		await fc.assert(fc.asyncProperty(fc.string({ unit: 'binary' }), refused));
		await fc.assert(
			fc.asyncProperty(fc.stringMatching(/^(1\.[0-9a-z]{1,7}|2\.z)\.[\w-]{0,300}$/), refused),
			{ numRuns: 300 }
		);
	});

	test('with one letter changed or cut off anywhere is refused', async () => {
		await fc.assert(
			fc.asyncProperty(questions, fc.nat(), fc.boolean(), async (question, at, cut) => {
				const fragment = await writeQuestion(question);
				const place = at % fragment.length;
				const letter = fragment[place] === 'A' ? 'B' : 'A';
				const changed = fragment.slice(0, place) + letter + fragment.slice(place + 1);
				const reading = await readQuestion(cut ? fragment.slice(0, place) : changed);
				// A change in bits that base64 does not use leaves the question as it was.
				if (reading.ok) expect(reading.question).toEqual(question);
				else expect(reading.sentence).toMatch(/^[A-Z][^.]+\.$/);
			}),
			{ numRuns: 300 }
		);
	});

	test('with a good checksum and any content is read whole or refused', async () => {
		await fc.assert(
			fc.asyncProperty(fc.jsonValue(), async (value) => refused(await packed(2, value))),
			{ numRuns: 300 }
		);
	});

	test.each([
		['a longer note', { note: 'n'.repeat(longestNote + 1) }],
		['more steps than there can be', { opened: 1000 }],
		['half a step', { opened: 0.5 }],
		['another unit', { units: 'ft' }],
		['a longer entry', { open: { length: '1'.repeat(longestTyped + 1) } }],
		['a key that is no step', { open: { '<b>': '1' } }],
		[
			'too many entries',
			{ open: Object.fromEntries(Array.from({ length: 41 }, (_, i) => [`a${i}`, '1'])) }
		]
	])('with %s is refused', async (_what, change) => {
		const good = fc.sample(questions, { numRuns: 1, seed: 7 })[0];
		await refused(await packed(2, { ...good, ...change }));
	});

	test('of a newer version is told apart', async () => {
		expect(await readQuestion(await packed(3, {}))).toEqual({
			ok: false,
			sentence: 'Update Bucktail first: a newer version made that link.'
		});
	});
});
