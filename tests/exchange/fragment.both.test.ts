import { describe, expect, test } from 'vitest';
import { packed, unpacked } from '../../src/lib/exchange/fragment.ts';
import firstLinks from '../app/ask/first-edition-links.json';

const damaged = { ok: false, reason: 'damaged' };
const newer = { ok: false, reason: 'newer' };
const value = { text: '½ of “D” is not 3/32. '.repeat(9), list: [1, null, true] };

/** A fragment with one letter exchanged. */
function changed(fragment: string, at: number): string {
	return fragment.slice(0, at) + (fragment[at] === 'A' ? 'B' : 'A') + fragment.slice(at + 1);
}

/** Fragments with each letter of their body exchanged or cut off in turn. */
function spoiled(fragment: string): string[] {
	const body = fragment.lastIndexOf('.') + 1;
	const places = Array.from({ length: fragment.length - body }, (_, i) => body + i);
	return places.flatMap((at) => [changed(fragment, at), fragment.slice(0, at)]);
}

describe('a fragment', () => {
	test('is read as it was written', async () => {
		const fragment = await packed(2, value);
		expect(await unpacked(2, fragment)).toEqual({ ok: true, value });
		expect(await unpacked(3, `#${fragment}`)).toEqual({ ok: true, value });
	});

	test('with any letter changed, or cut off anywhere, is damaged', async () => {
		for (const fragment of spoiled(await packed(2, value))) {
			expect(await unpacked(2, fragment), fragment).toEqual(damaged);
		}
	});

	test('of another form is damaged', async () => {
		const fragment = await packed(2, value);
		expect(await unpacked(2, fragment.replace('.z.', '.y.'))).toEqual(damaged);
		expect(await unpacked(2, fragment.replace('.z.', '.'))).toEqual(damaged);
		expect(await unpacked(2, fragment.replace('2.z.', '1.z.'))).toEqual(damaged);
	});

	test('of a newer version is told apart, by a copy of the first edition too', async () => {
		expect(await unpacked(2, await packed(3, value))).toEqual(newer);
		// What the first edition took for a fragment, damaged or not, before it looked at the version.
		expect(await packed(2, value)).toMatch(/^#?([1-9]\d{0,3})\.([0-9a-z]{1,7})\.([\w-]+)$/);
	});
});

describe('a fragment of the first edition', () => {
	test.each(firstLinks)('is read: $question.note', async ({ fragment, question }) => {
		expect(await unpacked(2, fragment)).toEqual({ ok: true, value: question });
	});

	test('that was changed or cut off is damaged', async () => {
		const [, { fragment } = { fragment: '' }] = firstLinks;
		for (const other of spoiled(fragment)) expect(await unpacked(2, other)).toEqual(damaged);
		expect(await unpacked(2, fragment.replace(/^1\.(.)/, '1.0'))).toEqual(damaged);
	});
});

test('a fragment that swells is read up to 64 kB', async () => {
	const text = ' '.repeat(64 * 1024 - 2);
	expect(await unpacked(2, await packed(2, text))).toEqual({ ok: true, value: text });
	expect(await unpacked(2, await packed(2, `${text} `))).toEqual(damaged);
	expect(await unpacked(2, await packed(2, text.repeat(100)))).toEqual(damaged);
});
