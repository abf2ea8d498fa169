import { mkdtemp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';

interface New {
	readonly title: string;
	readonly hash: string;
	readonly link: string;
	readonly tasks: readonly string[];
}

let folder = '';
let set: New;

const at = (name: string) => join(folder, name);

async function json<T = unknown>(...args: string[]): Promise<T> {
	const { code, out, err } = await run([...args, '--json']);
	expect({ code, err }).toEqual({ code: 0, err: '' });
	return JSON.parse(out) as T;
}

async function refused(...args: string[]): Promise<string> {
	const { code, out, err } = await run(args);
	expect({ code, out }).toEqual({ code: 2, out: '' });
	expect(err).toMatch(/^[A-Z].*\.$|try bucktail help\.$/);
	expect(err).not.toContain('\n');
	return err;
}

/** Hands in the answers of one student; gives the path of the file. */
async function handIn(code: string, answers: unknown, ...more: string[]): Promise<string> {
	const out = at(`class/hand-in-${code}.json`);
	await writeFile(at('answers.json'), JSON.stringify(answers));
	await json(
		...['set', 'hand-in', set.link, '--code', code],
		...['--answers', at('answers.json'), '--out', out, ...more]
	);
	return out;
}

interface Shown {
	readonly tasks: readonly {
		place: number;
		task: string;
		marks: number[];
		asked: { key: string }[];
		steps?: { key: string; text: string }[];
	}[];
}

async function rightAnswers(...more: string[]): Promise<Record<string, Record<string, string>>> {
	const { tasks } = await json<Shown>('set', 'show', set.link, '--answers', ...more);
	return Object.fromEntries(
		tasks.map(({ asked, steps = [] }, i) => [
			String(i + 1),
			Object.fromEntries(
				asked.map(({ key }) => {
					const text = steps.find((step) => step.key === key)?.text ?? '';
					return [key, text.replace(/ \(.*\)$/, '')];
				})
			)
		])
	);
}

beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), 'bucktail-set-'));
	await mkdir(at('class'));
	set = await json<New>('set', 'new', 'Section B, week 6', 'RL2*3', 'ED1*2', '--seed', 'week 6');
});

afterAll(() => rm(folder, { recursive: true }));

describe('set new', () => {
	test('prints title, hash, link and numbers', () => {
		expect(Object.keys(set)).toEqual(['title', 'hash', 'link', 'tasks']);
		expect(set.title).toBe('Section B, week 6');
		expect(set.tasks.map((number) => number.slice(0, 3))).toEqual([
			'RL2',
			'RL2',
			'RL2',
			'ED1',
			'ED1'
		]);
		expect(set.link).toMatch(/^http:\/\/localhost:\d+\/sets\/#2\.z\./);
	});

	test('gives the same again, and another set for anything else', async () => {
		const again = ['set', 'new', 'Section B, week 6', 'RL2*3', 'ED1*2', '--seed=week 6'];
		expect(await json('--json', ...again)).toEqual(set);
		for (const more of [
			['--own-numbers'],
			['--due', '2026-12-04'],
			['--no-help'],
			['--note', 'x']
		]) {
			const other = await json<New>(...again, ...more);
			expect(other.tasks).toEqual(set.tasks);
			expect(other.hash).not.toBe(set.hash);
		}
	});

	test('takes the address where students open it', async () => {
		const { link } = await json<New>(
			...['set', 'new', 'Week 6', 'RL2', '--address', 'https://school.example/bucktail']
		);
		expect(link).toMatch(/^https:\/\/school\.example\/bucktail\/sets\/#2\.z\./);
	});
});

describe('set show', () => {
	test('tells every task; answers only where they are asked for', async () => {
		const shown = await json<Shown & New>('set', 'show', set.link);
		expect(shown).toMatchObject({ title: set.title, hash: set.hash, link: set.link });
		expect(shown.tasks.map(({ task }) => task)).toEqual(set.tasks);
		expect(JSON.stringify(shown)).not.toContain('"steps"');
		const { tasks } = await json<Shown>('set', 'show', set.link, '--answers');
		expect(tasks[0]?.steps?.map(({ key }) => key)).toEqual(['grip', 'shank', 'needed', 'length']);
	});

	test('tells the tasks of one student', async () => {
		const own = await json<New>('set', 'new', 'Week 7', 'RL2*3', '--own-numbers', '--mixed-order');
		const [one, other, again] = await Promise.all(
			['B05', 'B06', 'b05'].map((code) => json<Shown>('set', 'show', own.link, '--code', code))
		);
		expect(one).toEqual(again);
		expect(one?.tasks).not.toEqual(other?.tasks);
	});
});

describe('set hand-in and set collect', () => {
	test('go from answers to marks, gradebook and slips', async () => {
		const right = await rightAnswers();
		await handIn('B05', right);
		await handIn('B06', { ...right, 1: { needed: '7.77 in' }, 2: {}, 3: { length: '??' } });
		await handIn('B07', { 1: right[1] }, '--name', '=cmd()', '--promised', '--version', '2');
		await writeFile(at('class/notes.txt'), 'Collected on Friday.');
		await writeFile(
			at('marks.json'),
			JSON.stringify([{ code: 'B06', task: 3, marks: 2, note: 'Worked on paper.' }])
		);
		const collected = await json<{
			set: string;
			handIns: { code: string; marks: number; of: number; answers: Record<string, unknown>[] }[];
			aside: unknown[];
		}>(
			...['set', 'collect', at('class'), '--csv', at('out.csv'), '--slips', at('slips.csv')],
			...['--overrides', at('marks.json'), '--xapi', at('xapi.json')]
		);
		expect(JSON.parse(await readFile(at('xapi.json'), 'utf8'))).toHaveLength(3 + 8 + 4 + 2);
		expect(collected.set).toBe(set.hash);
		expect(collected.aside).toEqual([
			{ file: at('class/notes.txt'), why: 'That is no hand-in of Bucktail.' }
		]);
		const rows = collected.handIns.map(({ code, marks, of }) => [code, marks, of]);
		expect(rows).toEqual([
			['B05', 16, 16],
			['B06', 6, 16],
			['B07', 4, 16]
		]);
		expect(collected.handIns[1]?.answers[0]).toMatchObject({
			task: set.tasks[0],
			key: 'needed',
			entry: '7.77 in',
			marks: 0
		});
		const csv = await readFile(at('out.csv'), 'utf8');
		expect(csv.split('\r\n')[3]).toMatch(/^B07,'=cmd\(\),4,0,0,0,0,4,16,2,/);
		expect(csv).toContain('Task 3: Worked on paper.');
		expect(await readFile(at('slips.csv'), 'utf8')).toMatch(
			/^\ufeffStep,Tasks,Slip,Students,Of,Codes\r\n/
		);
		const { out } = await run(['set', 'collect', at('class')]);
		expect(out).toMatch(/^Code +1 +2 +3 +4 +5 +of 16$/m);
		expect(out).toContain('Set aside: ');
	});

	test('keep who worked own numbers in an order of their own apart', async () => {
		const plain = set;
		set = await json<New>(
			'set',
			'new',
			'Week 8',
			'RL2*2',
			'ED2*2',
			'--own-numbers',
			'--mixed-order'
		);
		const files = [];
		for (const code of ['C1', 'C2', 'C3']) {
			files.push(await handIn(code, await rightAnswers('--code', code)));
		}
		const { handIns } = await json<{ handIns: { marks: number; of: number }[] }>(
			...['set', 'collect', ...files]
		);
		expect(handIns.map(({ marks, of }) => marks === of)).toEqual([true, true, true]);
		set = plain;
	});

	test('take a chosen option by its letter', async () => {
		const plain = set;
		set = await json<New>('set', 'new', 'Week 9', 'RL2', '--options');
		const { tasks } = await json<{ tasks: { choose: { key: string; options: string[] } }[] }>(
			...['set', 'show', set.link]
		);
		const right = (await rightAnswers())[1]?.length ?? '';
		const place = tasks[0]?.choose.options.findIndex((one) => one.startsWith(`${right} `)) ?? -1;
		const path = await handIn('D1', { 1: { length: 'abcd'[place] } });
		expect(JSON.parse(await readFile(path, 'utf8')).handIn.answers[0].entries.length).toMatch(
			/^[A-D]: /
		);
		const { handIns } = await json<{ handIns: { marks: number }[] }>('set', 'collect', path);
		expect(handIns[0]?.marks).toBe(4);
		set = plain;
	});
});

describe('set print', () => {
	test('writes sheets, and a key where it is asked for, a page or more a student', async () => {
		await writeFile(at('codes.csv'), '\ufeffCode;Name\r\nB05;"Li; Ann"\r\nB06;\r\n');
		const blank = await json<{ files: string[]; sheets: number; how: string }>(
			...['set', 'print', set.link, '--out', at('blank')]
		);
		expect(blank.files).toEqual([at('blank/worksheets.html')]);
		expect(blank.how).toContain('PDF');
		const two = await json<{ files: string[]; sheets: number; students: number }>(
			...['set', 'print', set.link, '--key', '--students', at('codes.csv'), '--out', at('two')]
		);
		expect(two).toMatchObject({ students: 2, sheets: 2 * blank.sheets });
		expect(await readFile(at('two/worksheets.html'), 'utf8')).toContain('Li; Ann');
		expect(await readFile(at('two/key.html'), 'utf8')).toContain('answer key');
	});

	test.each([
		['B05\nB05', 'has the code B05, as student 1 has'],
		['B05\n=1+1', 'Student 2 of the list, “=1+1”: A student code'],
		['', 'There is no student code in the list.']
	])('refuses the list %o', async (list, says) => {
		await writeFile(at('list.csv'), list);
		const line = ['set', 'print', set.link, '--students', at('list.csv'), '--out', at('x')];
		expect(await refused(...line)).toContain(says);
	});

	test('says what is left out', async () => {
		expect(await refused('set', 'print', set.link)).toContain('Give --out as well');
		await writeFile(at('file'), '');
		expect(await refused('set', 'print', set.link, '--out', at('file'))).toContain('Nothing can');
	});
});

describe('set export', () => {
	test('writes a package, and says what it cannot hold', async () => {
		const made = await json<{ items: number; left: string[] }>(
			...['set', 'export', set.link, '--qti', at('set.zip')]
		);
		expect(made.items).toBe(5);
		expect(made.left.join(' ')).toContain('decimals');
		const bytes = await readFile(at('set.zip'));
		expect(bytes.subarray(0, 4).toString('latin1')).toBe('PK\u0003\u0004');
	});

	test('says what is left out', async () => {
		expect(await refused('set', 'export', set.link)).toContain('Give --qti or --ics as well');
		const line = ['set', 'export', set.link, '--ics', at('due.ics')];
		expect(await refused(...line)).toContain('The set has no due date');
	});
});

describe('bad input: one line on standard error, exit code 2', () => {
	test.each([
		['set', 'There is no command set'],
		['set burn', 'There is no command set burn'],
		['set new', 'Give a title and what goes in'],
		['set new Week', 'Give a title and what goes in'],
		['set new Week RL', 'Write tasks as family, level and how many'],
		['set new Week QQ2', 'No family of tasks has the code QQ'],
		['set new Week RL2*60 ED1', 'A set has 1 to 60 tasks'],
		['set new Week RL2 --due Friday', 'its due is no date'],
		['set new Week RL2 --due 2026-13-01', 'its due is no day of the calendar'],
		['set new Week RL2 --seed', 'Give a value after --seed'],
		['set new Week RL2 --seed --json', 'Give a value after --seed'],
		['set new Week RL2 --own-numbers=yes', '--own-numbers takes no value'],
		['set new Week RL2 --loud', 'set new takes no --loud'],
		['set new Week RL2 --address school', 'Give --address as a web address'],
		['set show', 'Give one set link'],
		['set show nothing', 'That set link is damaged or cut short'],
		['set collect', 'Name the folder or the files'],
		['set collect /no/such/folder', 'There is no file /no/such/folder']
	])('%s', async (line, says) => {
		expect(await refused(...line.split(' '))).toContain(says);
	});

	test('a link with one character changed', async () => {
		const end = set.link.slice(0, -1);
		for (const last of ['A', 'g', '_']) {
			if (end + last === set.link) continue;
			expect(await refused('set', 'show', end + last)).toContain('damaged or cut short');
		}
	});

	test.each([
		['<script>', '{"1":{}}', 'A student code starts with a letter'],
		['B05', '{"9":{}}', 'The answers have a task 9; the set has 5.'],
		['B05', '{"1":{"girth":"1"}}', 'Task 1 has no step girth; it asks needed, length.'],
		['B05', '{"1":"5/16"}', 'Write the answers as'],
		['B05', '{"1":', 'There is no JSON in']
	])('a hand-in of %s with %s', async (code, answers, says) => {
		await writeFile(at('bad.json'), answers);
		const err = await refused(
			...['set', 'hand-in', set.link, '--code', code],
			...['--answers', at('bad.json'), '--out', at('x.json')]
		);
		expect(err).toContain(says);
	});

	test('a hand-in with something left out, or into no folder', async () => {
		await writeFile(at('one.json'), '{}');
		const line = ['set', 'hand-in', set.link, '--code', 'B05', '--answers', at('one.json')];
		expect(await refused(...line)).toContain('Give --out as well');
		expect(await refused(...line, '--out', at('no/such/x.json'))).toContain(
			'Nothing can be written to'
		);
		expect(await refused(...line, '--out', at('x.json'), '--units', 'ft')).toContain('--units');
		expect(await refused(...line, '--out', at('x.json'), '--version', '0')).toContain('--version');
	});

	test('what is left empty does not count as answered', async () => {
		await writeFile(at('empty.json'), '{"1":{"length":" "},"2":{},"3":{"length":"x"}}');
		const line = ['set', 'hand-in', set.link, '--code', 'B05', '--answers', at('empty.json')];
		expect(await json(...line, '--out', at('x.json'))).toMatchObject({
			answered: 1,
			unread: [{ place: 3, key: 'length' }]
		});
	});

	test('a list in place of answers', async () => {
		await writeFile(at('list.json'), '[]');
		const line = ['set', 'hand-in', set.link, '--code', 'B05', '--answers', at('list.json')];
		expect(await refused(...line, '--out', at('x.json'))).toContain('Write the answers as');
	});

	test('a table of hand-ins none of which can be marked', async () => {
		await writeFile(at('half.json'), '{"bucktail": ');
		expect(await json('set', 'collect', at('half.json'))).toMatchObject({
			set: null,
			aside: [{ why: expect.stringContaining('cut short') }]
		});
		const err = await refused('set', 'collect', at('half.json'), '--csv', at('none.csv'));
		expect(err).toContain('The hand-in is cut short or damaged');
	});

	test('overrides that are none', async () => {
		await writeFile(at('bad.json'), '[{"code":"B05"}]');
		const err = await refused('set', 'collect', at('class'), '--overrides', at('bad.json'));
		expect(err).toContain('each with a note');
	});

	test.each([
		[{ code: 'X99' }, 'has the code X99'],
		[{ task: 50 }, 'no task 50'],
		[{ marks: 99 }, 'B05 cannot get 99']
	])('overrides that meet nothing: %j', async (change, says) => {
		const one = { code: 'B05', task: 1, marks: 1, note: 'Worked on paper.', ...change };
		await writeFile(at('none.json'), JSON.stringify([one]));
		const err = await refused('set', 'collect', at('class'), '--overrides', at('none.json'));
		expect(err).toContain(says);
	});
});
