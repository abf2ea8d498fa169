import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { collect } from '../../src/lib/engine/sets/collect.ts';
import { composeSet, plainTerms, readWish } from '../../src/lib/engine/sets/compose.ts';
import type { HandIn } from '../../src/lib/engine/sets/hand-in.ts';
import { seal } from '../../src/lib/engine/sets/sealed.ts';
import { openSet } from '../../src/lib/engine/sets/open-set.ts';
import { checked } from '../../src/lib/exchange/checked.ts';
import { packed } from '../../src/lib/exchange/fragment.ts';
import { gather, type Source } from '../../src/lib/exchange/gather.ts';
import {
	handInName,
	readHandInFile,
	readHandInTexts,
	writeHandInFile,
	writeHandInText
} from '../../src/lib/exchange/hand-in-file.ts';
import { handInOf } from '../engine/sets/hand-ins.ts';

const open = await openSet(
	await composeSet(plainTerms('Section B, week 6'), [readWish('RL2*3'), readWish('ED2')])
);
const whole = await handInOf(open, 'B05');

const anyText = fc.string({ unit: 'grapheme', maxLength: 60 });
const steps = fc.constantFrom('length', 'grip', 'K');

const anyHandIn: fc.Arbitrary<HandIn> = fc.record({
	set: fc.constant(whole.set),
	hash: fc.constant(open.hash),
	code: fc.constantFrom('B05', 'MÜLLER 7', '12345', 'A.B-C_D'),
	name: anyText,
	version: fc.integer({ min: 1, max: 9999 }),
	promised: fc.boolean(),
	at: fc.constantFrom(null, '2026-12-03T15:41:00.000Z'),
	answers: fc.uniqueArray(
		fc.record({
			place: fc.integer({ min: 1, max: 60 }),
			entries: fc.dictionary(steps, anyText),
			picked: fc.dictionary(steps, fc.nat(9)),
			units: fc.constantFrom('in', 'mm'),
			opened: fc.array(steps, { maxLength: 4 }),
			charts: fc.array(fc.constantFrom('k-chart', 'drill-chart'), { maxLength: 3 }),
			seconds: fc.option(fc.nat(100_000))
		}),
		{ maxLength: 8, selector: ({ place }) => place }
	)
});

function file(name: string, content: string | Uint8Array): Source {
	const bytes = typeof content === 'string' ? strToU8(content) : content;
	return { name, size: bytes.length, read: () => Promise.resolve(bytes) };
}

/** Why each of these files was set aside, by name; what was found is not told. */
async function whyAside(...sources: Source[]): Promise<Record<string, string>> {
	const { aside } = await gather(sources);
	return Object.fromEntries(aside.map(({ file: name, why }) => [name, why]));
}

const sentence = /^[A-Z][^<]*\.$/;

describe('a hand-in', () => {
	test('is read from its file and from its text as it was written', async () => {
		await fc.assert(
			fc.asyncProperty(anyHandIn, async (handIn) => {
				expect(readHandInFile(writeHandInFile(handIn))).toEqual({ ok: true, handIn });
				const text = await writeHandInText(handIn);
				if (text === null) throw new Error('too long');
				const mailed = `Hello,\n> ${text.replace(/(.{60})/g, '$1\n> ')}\nBest wishes]`;
				expect(await readHandInTexts(mailed)).toEqual([{ ok: true, handIn }]);
			})
		);
	});

	test('is read however a program has saved the text', async () => {
		const message = `Müller\n${(await writeHandInText(whole)) ?? ''}`;
		const wide = (from: string) =>
			new Uint8Array(Uint16Array.from(from, (x) => x.charCodeAt(0)).buffer);
		const turned = (bytes: Uint8Array) => bytes.map((_, i) => bytes[i ^ 1] ?? 0);
		const saved = [
			wide(`\ufeff${message}`),
			wide(message),
			turned(wide(`\ufeff${message}`)),
			turned(wide(message)),
			strToU8(`\ufeff${message}`),
			Uint8Array.from(message, (x) => x.charCodeAt(0))
		];
		const { found, aside } = await gather(saved.map((bytes, i) => file(`${i}.txt`, bytes)));
		expect(aside).toEqual([]);
		expect(found.map(({ handIn }) => handIn)).toEqual(saved.map(() => whole));
	});

	test('of 20 tasks is short enough to paste into a message', async () => {
		const long = await openSet(
			await composeSet(plainTerms('Section B, week 6'), [readWish('RL2*10'), readWish('LR2*10')])
		);
		const handIn = await handInOf(long, 'B05');
		const timed = { ...handIn, answers: handIn.answers.map((one) => ({ ...one, seconds: 91 })) };
		expect((await writeHandInText(timed))?.length).toBeLessThan(1500);
	});

	test('too long for a text is told, and the file holds it', async () => {
		const entries = Object.fromEntries(
			Array.from({ length: 40 }, (_, i) => [`k${i}`, String.fromCharCode(200 + i).repeat(200)])
		);
		const answers = Array.from({ length: 9 }, (_, i) => ({ place: i + 1, entries }));
		const handIn = { ...whole, answers } as unknown as HandIn;
		expect(await writeHandInText(handIn)).toBeNull();
		expect(readHandInFile(writeHandInFile(handIn)).ok).toBe(true);
	});

	test('has a file name that any system takes', () => {
		expect(handInName({ ...whole, code: 'B 05' })).toBe('hand-in-B-05-1.json');
	});
});

describe('set aside with one sentence, and nothing is lost', () => {
	const text = writeHandInFile(whole);

	test('with an edited entry, and the task is named', async () => {
		const sealed = seal(whole);
		const edited = structuredClone(sealed);
		const answer = edited.handIn.answers[2];
		if (!answer?.entries) throw new Error('no answer');
		answer.entries.length = '7/8 in';
		expect(await whyAside(file('B05.json', JSON.stringify(edited)))).toEqual({
			'B05.json': 'Changed after it was handed in: task 3 does not match its check.'
		});
		const renamed = { ...sealed, handIn: { ...sealed.handIn, code: 'B06' } };
		expect(await whyAside(file('B06.json', JSON.stringify(renamed)))).toEqual({
			'B06.json': 'Changed after it was handed in: it does not match its check.'
		});
		const later = { ...sealed, handIn: { ...sealed.handIn, at: '2026-12-01T10:00:00.000Z' } };
		expect((await whyAside(file('a', JSON.stringify(later)))).a).toMatch(/^Changed after/);
	});

	test('cut off anywhere', async () => {
		for (let end = 40; end < text.length - 3; end += 37) {
			const why = await whyAside(file('B05.json', text.slice(0, end)));
			expect(why['B05.json'], String(end)).toMatch(/cut short or damaged/);
		}
		const message = (await writeHandInText(whole)) ?? '';
		for (let end = 20; end < message.length; end += 11) {
			const why = await whyAside(file('B05.txt', message.slice(0, end)));
			expect(why['B05.txt'], String(end)).toMatch(/cut short or damaged/);
		}
	});

	test('with one character of its text changed', async () => {
		const message = (await writeHandInText(whole)) ?? '';
		const from = message.indexOf('2.z.');
		for (let at = from; at < message.length - 1; at++) {
			const other = message[at] === 'A' ? 'B' : 'A';
			const why = await whyAside(file('a', message.slice(0, at) + other + message.slice(at + 1)));
			expect(why.a, String(at)).toMatch(sentence);
		}
	});

	test('with HTML or script in the code', async () => {
		for (const code of [
			'<script>alert(1)</script>',
			'<img src=x onerror=alert(1)>',
			'=1+1',
			'b05'
		]) {
			const made = { ...seal(whole), handIn: { ...whole, code } };
			const why = await whyAside(file('a', JSON.stringify(made)));
			expect(why.a).toBe(
				'The student code in it has characters that no code may have; ask for it to be handed in again.'
			);
		}
	});

	test('of 50 MB, which is not even read', async () => {
		const read = () => Promise.reject(new Error('was read'));
		expect(await whyAside({ name: 'big.json', size: 50_000_000, read })).toEqual({
			'big.json': 'Too large for a hand-in: 50.0 MB. It was not read.'
		});
		const spaces = text + ' '.repeat(300_000);
		expect((await whyAside(file('b', spaces))).b).toMatch(/^Too large for a hand-in: 0.3 MB/);
	});

	test('what it begins with is told, where that is a text', async () => {
		const cut = text.slice(0, -20);
		const { aside } = await gather([file('cut', cut), file('image', new Uint8Array([255, 0, 1]))]);
		expect(aside.map(({ inside }) => inside)).toEqual([cut.slice(0, 1000), undefined]);
	});

	test('that is something else, or of a newer edition', async () => {
		const newer = JSON.stringify({ ...seal(whole), form: 4 });
		const message = `[Bucktail hand-in B05: ${checked(await packed(3, seal(whole)))}]`;
		const why = await whyAside(
			file('a.png', new Uint8Array([137, 80, 78, 71])),
			file('b.json', '[]'),
			file('c.txt', ''),
			file('d.json', newer),
			file('e.txt', message),
			file('f.json', JSON.stringify({ ...seal(whole), handIn: { ...whole, answers: 'x' } }))
		);
		expect(why).toEqual({
			'a.png': 'That is no hand-in of Bucktail.',
			'b.json': 'That is no hand-in of Bucktail.',
			'c.txt': 'That is no hand-in of Bucktail.',
			'd.json': 'Update Bucktail first: a newer version made that hand-in.',
			'e.txt': 'Update Bucktail first: a newer version made that hand-in.',
			'f.json': 'The hand-in is damaged; ask for it to be sent again.'
		});
	});

	test('in a package: a bomb, one cut short, and what else is in it', async () => {
		const bomb = zipSync({ 'a.json': new Uint8Array(60_000_000) });
		expect(bomb.length).toBeLessThan(100_000);
		const zip = zipSync({
			'class/B05.json': strToU8(text),
			'class/notes.docx': strToU8('x'),
			'../../evil.json': strToU8(text),
			'__MACOSX/class/._B05.json': strToU8('x'),
			'class/.DS_Store': strToU8('x'),
			'inner.zip': zipSync({ 'B06.json': strToU8(text) }),
			__proto__x: strToU8('x')
		});
		const { found, aside } = await gather([
			file('bomb.zip', bomb),
			file('cut.zip', zip.slice(0, zip.length - 30)),
			file('class.zip', zip)
		]);
		expect(found.map(({ file: name }) => name)).toEqual([
			'class.zip/class/B05.json',
			'class.zip/../../evil.json'
		]);
		expect(aside).toMatchObject([
			{ file: 'bomb.zip', why: expect.stringMatching(/is too large for hand-ins/) },
			{ file: 'cut.zip', why: expect.stringMatching(/damaged or cut short/) },
			{ file: 'class.zip/class/notes.docx', why: 'That is no hand-in of Bucktail.' },
			{ file: 'class.zip/inner.zip', why: expect.stringContaining('A package in a package') },
			{ file: 'class.zip/__proto__x', why: 'That is no hand-in of Bucktail.' }
		]);
		const many = Object.fromEntries(Array.from({ length: 501 }, (_, i) => [`${i}`, strToU8('x')]));
		expect(await whyAside(file('many.zip', zipSync(many)))).toEqual({
			'many.zip': 'It holds more than 500 files.'
		});
	});

	test('whatever the bytes are', async () => {
		await fc.assert(
			fc.asyncProperty(
				fc.uint8Array({ maxLength: 300 }),
				fc.constantFrom([], [0x50, 0x4b, 3, 4], [...strToU8('[Bucktail hand-in x: 2.z.')]),
				async (bytes, start) => {
					const { found, aside } = await gather([file('a', new Uint8Array([...start, ...bytes]))]);
					expect(found).toEqual([]);
					for (const { why } of aside) expect(why).toMatch(sentence);
				}
			)
		);
	});
});

test('500 files at once, with progress: all are read', async () => {
	const codes = Array.from({ length: 500 }, (_, i) => `S${i + 1}`);
	const handIns = await Promise.all(codes.map((code) => handInOf(open, code)));
	const sources = handIns.map((one) => file(handInName(one), writeHandInFile(one)));
	let last = 0;
	const { found, aside } = await gather(sources, (done, of) => (last = done / of));
	expect({ found: found.length, aside, last }).toEqual({ found: 500, aside: [], last: 1 });
	const { handIns: marked } = await collect(open, found.slice(0, 20));
	expect(marked.every(({ marks, of }) => marks === of)).toBe(true);
});

test('what was told to be wrong comes with it, and only then earlier editions cannot read it', async () => {
	const [first, ...others] = whole.answers;
	if (!first) throw new Error('no answer');
	const told = { ...whole, answers: [{ ...first, told: ['length'] }, ...others] };
	expect(seal(whole).form).toBe(1);
	expect(seal({ ...whole, device: '0123456789' }).form).toBe(2);
	expect(seal(told).form).toBe(3);
	expect(readHandInFile(writeHandInFile(told))).toEqual({ ok: true, handIn: told });
	const { handIns } = await collect(open, [{ file: 'a', handIn: told }]);
	expect(handIns[0]?.tasks.map((one) => one.told)).toEqual([['length'], [], [], []]);
});

test('a file that cannot be opened may be tried again', async () => {
	const read = () => Promise.reject(new Error('locked'));
	const { aside } = await gather([{ name: 'open.json', size: 10, read }]);
	expect(aside).toMatchObject([{ file: 'open.json', again: true }]);
});
