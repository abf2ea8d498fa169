import { describe, expect, test } from 'vitest';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import { type OpenSet, openSet } from '../../../src/lib/engine/sets/open-set.ts';
import {
	type QtiPackage,
	qtiPackage,
	readQti,
	writeQti
} from '../../../src/lib/exchange/qti/package.ts';
import { readZip } from '../../../src/lib/exchange/zip.ts';
import { agreementOn } from './entries.ts';
import { processorOf } from './processor.ts';
import { faultIn } from './validate.ts';

function faultsIn({ files }: QtiPackage): string[] {
	return [...files].flatMap(([name, text]) =>
		/\.(xml|svg)$/.test(name) ? (faultIn(name, text) ?? []) : []
	);
}

const wishes = cards.flatMap(({ code }) => [1, 2, 3].map((level) => readWish(code + level)));

async function setOf(part: typeof wishes, more: object = {}): Promise<OpenSet> {
	return openSet(await composeSet({ ...plainTerms('Week 6 <&"> ½'), ...more }, part));
}

const open = await setOf('RL2 ED2 RR3 SC2 LR3 RN1'.split(' ').map(readWish));
const made = qtiPackage(open);

describe('a package', () => {
	test.each(['typed', 'options'] as const)(
		'of every family is valid, answers %s',
		async (answers) => {
			for (let at = 0; at < wishes.length; at += 60) {
				const one = qtiPackage(await setOf(wishes.slice(at, at + 60), { answers }));
				expect(faultsIn(one)).toEqual([]);
				expect(one.left.filter((sentence) => sentence.includes('is left out'))).toEqual([]);
			}
		}
	);

	test('lists every file it holds and no other', () => {
		const manifest = made.files.get('imsmanifest.xml') ?? '';
		const listed = [...manifest.matchAll(/<file href="([^"]+)"/g)].map(([, name]) => name);
		expect(['imsmanifest.xml', ...listed].sort()).toEqual([...made.files.keys()].sort());
		const ids = [...manifest.matchAll(/resource identifier="([^"]+)"/g)].map(([, id]) => id);
		for (const [, id] of manifest.matchAll(/identifierref="([^"]+)"/g)) expect(ids).toContain(id);
	});

	test('is caught when it does not keep to the profile', () => {
		const item = made.files.get('items/task-1.xml') ?? '';
		const spoiled = [
			item.replace('cardinality="single"', 'cardinality="multiple"'),
			item.replace(/<qti-item-body>.*<\/qti-item-body>/, ''),
			item.replace('tolerance-mode="absolute"', 'tolerance-mode="loose"'),
			item.replaceAll('qti-value', 'qtiValue'),
			item.replace('identifier="R1"', 'identifier="1R"')
		];
		for (const text of spoiled) {
			expect(text).not.toBe(item);
			expect(faultIn('items/task-1.xml', text)).not.toBeNull();
		}
	});

	test('is a ZIP of the same bytes every time, and gives the set back', () => {
		const bytes = writeQti(made);
		expect(writeQti(qtiPackage(open))).toEqual(bytes);
		const zip = readZip(bytes);
		expect(zip.ok && [...zip.files.keys()]).toEqual([...made.files.keys()]);
		expect(readQti(bytes)).toEqual({ ok: true, set: open.set });
		expect(readQti(bytes.slice(0, 500)).ok).toBe(false);
		const foreign = writeQti({ files: new Map([['imsmanifest.xml', '<manifest/>']]) });
		expect(readQti(foreign)).toMatchObject({
			sentence: expect.stringMatching(/not made by Bucktail/)
		});
	});

	test('says what it cannot hold', async () => {
		expect(made.left).toHaveLength(3);
		const all = await setOf([readWish('RL2')], {
			...{ numbers: 'own', order: 'mixed', due: '2026-12-04', help: false, note: 'x' }
		});
		expect(qtiPackage(all).left).toHaveLength(8);
		for (const sentence of qtiPackage(all).left) expect(sentence).toMatch(/^[A-Z].*\.$/);
	});
});

describe('an item, marked by its own processing', () => {
	test('gives full marks for its right answers, none for none', () => {
		for (const { place, marks } of open.tasks) {
			const xml = made.files.get(`items/task-${place}.xml`) ?? '';
			const right = Object.fromEntries(
				[...xml.matchAll(/response-declaration identifier="([^"]+)".*?<qti-value>([^<]*)</g)].map(
					([, id = '', value = '']) => [id, value]
				)
			);
			const process = processorOf(xml);
			expect(process(right).score).toBe(marks.length);
			expect(process({}).score).toBe(0);
		}
	});

	test('says which slip leads to a number', () => {
		const [task] = open.tasks;
		if (!task) throw new Error('no task');
		const xml = made.files.get('items/task-1.xml') ?? '';
		const value = task.task.slips.get('noShank')?.needed;
		const { score, feedback } = processorOf(xml)({ R1: String(value) });
		const id = feedback['FEEDBACK-1'] ?? '';
		expect(score).toBe(0);
		expect(xml).toContain(
			`identifier="${id}" show-hide="show"><qti-content-body><p>${task.task.method.slips.noShank?.says ?? '?'}`
		);
	});

	test('marks numbers as Bucktail does', async () => {
		const { entries, right, otherwise } = await agreementOn([5], 40);
		expect(otherwise).toEqual([]);
		expect(entries).toBeGreaterThan(3000);
		expect(right).toBeGreaterThan(entries / 4);
	});
});
