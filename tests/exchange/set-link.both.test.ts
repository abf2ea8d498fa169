import fc from 'fast-check';
import { expect, test } from 'vitest';
import { composeSet, plainTerms, readWish } from '../../src/lib/engine/sets/compose.ts';
import { setHash } from '../../src/lib/engine/sets/set.ts';
import { cards } from '../../src/lib/engine/families/topics.ts';
import { checked } from '../../src/lib/exchange/checked.ts';
import { packed } from '../../src/lib/exchange/fragment.ts';
import { hasLink, readSetLink, writeSet } from '../../src/lib/exchange/set-link.ts';
import { anySet } from '../engine/sets/set-arbitrary.ts';

const address = 'https://maintenance-school.example.edu/bucktail/sets/#';

/** Twenty tasks of as many families, with everything written that an instructor would. */
const usual = await composeSet(
	{
		...plainTerms('Section B, week 6: rivets, layout and bends'),
		order: 'mixed',
		help: false,
		due: '2026-12-04T16:00',
		tolerance: 'Lines within 1/32 in count.',
		note: 'Work it alone. Bring the sheet to the lab on Friday; we drill the row there.'
	},
	cards.slice(0, 20).map(({ code }, i) => readWish(`${code}${(i % 3) + 1}`))
);

test('any set is read as it was written', async () => {
	await fc.assert(
		fc.asyncProperty(anySet, async (set) => {
			const fragment = await writeSet(set);
			expect(await readSetLink(fragment)).toEqual({ ok: true, set });
			expect(await readSetLink(` ${address}${fragment}\n`)).toEqual({ ok: true, set });
			expect(await readSetLink(`(“<${address}${fragment}>”).%20`)).toEqual({ ok: true, set });
			const message = `The set for Friday:\n${address}${fragment}.\nSee you there`;
			expect(await readSetLink(message)).toEqual({ ok: true, set });
			expect(hasLink(message) && hasLink(fragment)).toBe(true);
		}),
		{ numRuns: 300 }
	);
});

test('a text without a link is told from a damaged one', () => {
	expect(hasLink('Dear all, 2.5 in.')).toBe(false);
	expect(hasLink(`${address}2.z.eJ`)).toBe(true);
});

test('20 tasks with dates and notes fit in 600 characters with their address', async () => {
	const link = address + (await writeSet(usual));
	expect(usual.tasks).toHaveLength(20);
	expect(link.length).toBeLessThanOrEqual(600);
});

test('one character changed, added or left out anywhere: refused with a sentence', async () => {
	for (const set of [usual, { ...usual, title: 'B', note: '' }, { ...usual, help: true }]) {
		await refusesChanges(await writeSet(set));
	}
});

async function refusesChanges(fragment: string): Promise<void> {
	for (let at = 0; at < fragment.length; at++) {
		const [before, after] = [fragment.slice(0, at), fragment.slice(at + 1)];
		const others = ['A', 'B', 'z', '0', '-', '_', '.'].filter((one) => one !== fragment[at]);
		const changed = [...others.map((one) => before + one + after), before + after, before];
		for (const link of changed) {
			const reading = await readSetLink(link);
			expect(reading.ok, link).toBe(false);
			if (!reading.ok) expect(reading.sentence).toMatch(/^[A-Z].*\.$/);
		}
	}
}

test('a newer edition is told apart', async () => {
	expect(await readSetLink(checked(await packed(4, ['?'])))).toMatchObject({
		sentence: expect.stringMatching(/^Update Bucktail first/)
	});
});

test('what is no set is refused, whatever it is', async () => {
	const damaged = { ok: false, sentence: expect.stringMatching(/damaged or cut short/) };
	for (const value of [null, [], ['x'], { title: 'x' }, Array.from({ length: 11 }, () => '')]) {
		const reading = await readSetLink(checked(await packed(2, value)));
		expect(reading.ok).toBe(false);
	}
	for (const link of ['', '#', 'https://example.org/', '2.z.', 'x'.repeat(100_000)]) {
		expect(await readSetLink(link)).toEqual(damaged);
	}
});

test('the hash stands for everything in the set', async () => {
	await fc.assert(
		fc.property(anySet, anySet, (one, other) => {
			const same = JSON.stringify(one) === JSON.stringify(other);
			expect(setHash(one) === setHash(other)).toBe(same);
			for (const key of Object.keys(one) as (keyof typeof one)[]) {
				const mixed = { ...one, [key]: other[key] };
				const alike = JSON.stringify(mixed) === JSON.stringify(one);
				expect(setHash(mixed) === setHash(one)).toBe(alike);
			}
		})
	);
	const [first, ...rest] = usual.tasks;
	if (!first) throw new Error('no task');
	const oneMark = { ...first, marks: first.marks.map((mark, i) => (i === 0 ? mark + 1 : mark)) };
	expect(setHash({ ...usual, tasks: [oneMark, ...rest] })).not.toBe(setHash(usual));
});
