import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	type Backup,
	maxBackupBytes,
	readBackup,
	readBackupFile,
	writeBackup
} from '../../src/lib/storage/backup-file.ts';
import { attempt, events, kit, sam } from './event-arbitrary.ts';

const made = '2026-03-09T10:00:00.000Z';
const first = attempt({ typed: { length: '5/16 "$&' } });
const backup: Backup = {
	made,
	learners: [
		{ id: sam, nickname: 'Sam', events: [first, attempt()] },
		{ id: kit, nickname: 'Kit "[]"', events: [] }
	]
};

/** A backup file with something changed. */
function changed(change: (file: ReturnType<typeof plain>) => unknown): string {
	const file = plain();
	return JSON.stringify(change(file) ?? file);
}

function plain() {
	return { bucktail: 'backup', version: 1, ...structuredClone(backup) };
}

describe('the file', () => {
	test('is indented JSON with an event a line', () => {
		const text = writeBackup(backup);
		expect(JSON.parse(text)).toEqual(plain());
		const lines = text.split('\n');
		expect(lines.slice(0, 5)).toEqual([
			'{',
			'  "bucktail": "backup",',
			'  "version": 1,',
			`  "made": "${made}",`,
			'  "learners": ['
		]);
		expect(lines).toContain(`        ${JSON.stringify(first)},`);
		expect(text.endsWith('}\n')).toBe(true);
	});

	test('without learners', () => {
		expect(readBackup(writeBackup({ made, learners: [] }))).toEqual({
			ok: true,
			backup: { made, learners: [] }
		});
	});

	test('reads back as it was written', () => {
		const name = fc.string({ minLength: 1, maxLength: 20, unit: 'binary' });
		const file = fc.record({
			made: fc.date({ noInvalidDate: true, min: new Date(0), max: new Date(4e12) }),
			sams: events(fc.constant(sam)),
			kits: events(fc.constant(kit)),
			names: fc.tuple(name, name)
		});
		fc.assert(
			fc.property(file, ({ made, sams, kits, names }) => {
				const backup = {
					made: made.toISOString(),
					learners: [
						{ id: sam, nickname: names[0], events: sams },
						{ id: kit, nickname: names[1], events: kits }
					]
				};
				expect(readBackup(writeBackup(backup))).toEqual({ ok: true, backup });
			}),
			{ numRuns: 300 }
		);
	});
});

const broken = attempt({ seconds: -1 });

describe('a file is refused', () => {
	test.each([
		['empty', '', 'damaged', 'That file is damaged or no backup at all; choose another copy.'],
		['cut off', writeBackup(backup).slice(0, -40), 'damaged', /^That file is damaged or no/],
		['a picture', '\u0089PNG\r\n', 'damaged', /^That file is damaged or no/],
		['nested without end', '['.repeat(200_000), 'damaged', /^That file is damaged or no/],
		['another kind of JSON', '{"name":"x"}', 'foreign', /^That file is not a Bucktail backup; /],
		['a list', '[]', 'foreign', /^That file is not a Bucktail backup; /],
		['null', 'null', 'foreign', /^That file is not a Bucktail backup; /],
		[
			'another file of ours',
			changed((file) => ({ ...file, bucktail: 'hand-in' })),
			'foreign',
			/^That file is not a Bucktail backup; /
		],
		[
			'a newer version, whatever is in it',
			'{"bucktail":"backup","version":2,"people":7}',
			'newer',
			'Update Bucktail first: a newer version made that backup.'
		],
		[
			'a newer event',
			changed((file) => Object.assign(file.learners[0]?.events[1] ?? {}, { v: 2 }) && undefined),
			'newer',
			'Update Bucktail first: a newer version made that backup.'
		],
		[
			'no date',
			changed((file) => ({ ...file, made: 'Monday' })),
			'damaged',
			'That backup is damaged; choose another copy of it.'
		],
		[
			'a day that is none',
			changed((f) => ({ ...f, made: '2026-02-31T10:00Z' })),
			'damaged',
			/^That/
		],
		['no learners', changed((file) => ({ ...file, learners: {} })), 'damaged', /^That backup/],
		[
			'the same learner twice',
			changed((file) => ({ ...file, learners: [file.learners[0], file.learners[0]] })),
			'damaged',
			/^That backup is damaged; /
		],
		[
			'a learner without a nickname',
			changed((file) => ({ ...file, learners: [{ id: sam, nickname: '', events: [] }] })),
			'damaged',
			/^That backup is damaged; /
		],
		[
			'more learners than a device has',
			changed((file) => ({
				...file,
				learners: Array.from({ length: 1001 }, () => ({
					id: crypto.randomUUID(),
					nickname: 'Sam',
					events: []
				}))
			})),
			'damaged',
			/^That backup is damaged; /
		],
		[
			'a broken event',
			changed((file) => ({
				...file,
				learners: [{ id: sam, nickname: 'Sam', events: [first, broken] }]
			})),
			'broken-event',
			'That backup is damaged at event 2 of Sam; choose another copy of it.'
		],
		[
			"another learner's event",
			changed((file) => ({ ...file, learners: [{ id: kit, nickname: 'Kit', events: [first] }] })),
			'broken-event',
			'That backup is damaged at event 1 of Kit; choose another copy of it.'
		]
	])('%s', (_name, text, reason, sentence) => {
		expect(readBackup(text)).toEqual({
			ok: false,
			reason,
			sentence: typeof sentence === 'string' ? sentence : expect.stringMatching(sentence)
		});
	});

	test('too large, before it is read in', async () => {
		const file = new Blob(['{}']);
		Object.defineProperty(file, 'size', { value: maxBackupBytes + 1 });
		file.text = () => Promise.reject(new Error('it was read in'));
		const refusal = {
			ok: false,
			reason: 'too-large',
			sentence: 'That file is larger than 64 MB; choose a Bucktail backup.'
		};
		expect(await readBackupFile(file)).toEqual(refusal);
		expect(readBackup(' '.repeat(maxBackupBytes + 1))).toEqual(refusal);
	});

	test('a file of the right size is read', async () => {
		const file = new Blob([writeBackup(backup)]);
		expect(await readBackupFile(file)).toEqual({ ok: true, backup });
	});
});

test('a file with any character changed or cut is read or refused, and never throws', () => {
	const text = writeBackup(backup);
	const place = fc.nat({ max: text.length - 1 });
	fc.assert(
		fc.property(place, fc.nat({ max: 8 }), fc.string({ maxLength: 4 }), (at, cut, put) => {
			const reading = readBackup(text.slice(0, at) + put + text.slice(at + cut));
			expect(reading).toHaveProperty(reading.ok ? 'backup' : 'sentence');
		}),
		{ numRuns: 2_000 }
	);
});
