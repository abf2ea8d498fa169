import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { run, usage } from '../../src/cli/run.ts';

async function json(...args: string[]): Promise<unknown> {
	const { code, out, err } = await run([...args, '--json']);
	expect({ code, err }).toEqual({ code: 0, err: '' });
	return JSON.parse(out);
}

const inches = (number: number) => ({ number, unit: 'in' });

describe('solve', () => {
	test('prints givens and steps as the README says', async () => {
		expect(await json('solve', 'rivet-length', 'layers=0.032in,0.040in', 'D=1/8')).toEqual({
			method: 'rivet-length',
			given: { layers: [inches(0.032), inches(0.04)], D: inches(0.125) },
			steps: [
				{ key: 'grip', value: inches(0.072), text: '0.072 in' },
				{ key: 'shank', value: inches(0.1875), text: '0.1875 in' },
				{ key: 'needed', value: inches(0.2595), text: '0.2595 in' },
				{ key: 'length', value: inches(0.3125), text: '5/16 in (−5)' }
			]
		});
	});

	test('shows formulas in the words of the printed key', async () => {
		const lines = async (...args: string[]) =>
			(await run(['solve', ...args])).out.split('\n').map((line) => line.replace(/  +/g, '  '));
		const bend = ['R=.16', 'T=.04', 'angle=90'];
		expect(await lines('sight-line', 'leg=1', ...bend)).toEqual(
			expect.arrayContaining([
				'K for the bend angle  K = tan N/2  = 1',
				'Setback  SB = K × (R + T)  = 0.200 in'
			])
		);
		const head = await lines('shop-head-check', 'D=1/8', 'width=.19', 'height=.06');
		expect(head.at(-1)).toContain(
			'judgement = replace if width > most width or height < least height; drive more if width < least width or height > most height; accept otherwise'
		);
		const number = await lines(
			'rivet-number',
			'head=universal',
			'alloy=2117',
			'D=1/8',
			'length=1/4'
		);
		expect(number.at(-1)).toContain(
			'number = MS20 head number letters diameter dash - length dash  = MS20470AD4-4'
		);
	});

	// Public keys of every method, with a value worked by hand or printed in a source.
	test.each([
		['rivet-diameter thickest=0.032', 'diameter', inches(0.125)],
		['rivet-length layers=.0625,.0625 D=1/8', 'length', inches(0.3125)],
		['shop-head D=1/8', 'width', inches(0.1875)],
		['shop-head D=1/8', 'height', inches(0.0625)],
		['edge-distance D=1/8 head=protruding', 'least', inches(0.25)],
		['edge-distance D=1/8 head=countersunk', 'least', inches(0.3125)],
		['edge-distance D=1/8 head=countersunk', 'greatest', inches(0.5)],
		['rivet-row length=10 endMargin=1/4 greatestPitch=3/4', 'spaces', { number: 13, unit: '' }],
		['rivet-row length=10 endMargin=1/4 greatestPitch=3/4', 'count', { number: 14, unit: '' }],
		['rivet-row length=10 endMargin=1/4 greatestPitch=3/4', 'pitch', inches(9.5 / 13)],
		[
			'rivet-row length=2 endMargin=1/4 greatestPitch=3/4',
			'positions',
			[0.25, 1, 1.75].map(inches)
		],
		['setback R=.16 T=.04 angle=90', 'setback', inches(0.2)],
		['setback R=.16 T=.04 angle=90', 'K', { number: 1, unit: '' }],
		['bend-allowance R=.16 T=.04 angle=90', 'allowance', inches(0.279072)],
		['developed-width R=.16 T=.04 legs=1,2,1 angles=90,90', 'flats', [0.8, 1.6, 0.8].map(inches)],
		['developed-width R=.16 T=.04 legs=1,2,1 angles=90,90', 'width', inches(3.758144)],
		['sight-line leg=1 R=.16 T=.04 angle=90', 'tangentLine', inches(0.8)],
		['sight-line leg=1 R=.16 T=.04 angle=90', 'sightLine', inches(0.96)],
		['least-bend-radius alloy=2024-T3 T=0.040', 'radius', inches(0.16)],
		[
			'pieces-per-sheet sheetLength=96 sheetWidth=48 pieceLength=16 pieceWidth=12 kerf=0',
			'count',
			{ number: 24, unit: '' }
		],
		['bar-pieces bar=144 piece=12 kerf=1/16', 'count', { number: 11, unit: '' }],
		['bar-pieces bar=144 piece=12 kerf=1/16', 'remnant', inches(11.3125)],
		[
			'sheet-weight length=144 width=48 T=.032 alloy=2024',
			'weight',
			{ number: 22.1184, unit: 'lb' }
		],
		['drill-for-rivet D=1/8', 'pilot', inches(0.125)],
		['drill-for-rivet D=1/8', 'final', inches(0.1285)]
	])('%s: %s', async (line, key, value) => {
		const answer = (await json('solve', ...line.split(' '))) as {
			steps: { key: string; value: unknown }[];
		};
		const found = answer.steps.find((step) => step.key === key)?.value;
		expect(JSON.parse(JSON.stringify(found), rounded)).toEqual(
			JSON.parse(JSON.stringify(value), rounded)
		);
	});

	test('lengths are read in any notation', async () => {
		const metric = await json('solve', 'setback', 'R=4.064mm', 'T=40 thou', 'angle=90 deg');
		const inch = await json('solve', 'setback', 'R=.16', 'T=0.040in', 'angle=90°');
		expect(metric).toEqual(inch);
	});
});

function rounded(_: string, value: unknown): unknown {
	return typeof value === 'number' ? Number(value.toFixed(9)) : value;
}

describe('bad input: one line on standard error, exit code 2', () => {
	test.each([
		['nonsense', 'There is no command nonsense'],
		['solve', 'Name a method'],
		['solve nothing', 'There is no method nothing'],
		['solve setback R=1', 'setback also needs T'],
		['solve setback R=1 T=.04 angle=90 X=2', 'setback has no given called X'],
		['solve setback R=1 R=2', 'R stands twice'],
		['solve setback R', 'Write R as key=value.'],
		['solve shop-head D=3deg', '3 deg is an angle'],
		['solve setback R=1/8 T=0 angle=90', 'T must be more than zero'],
		['solve setback R=1/8 T=-.04 angle=90', 'T: A size is not below zero'],
		['solve setback R=.1,.2 T=.04 angle=90', 'R is one value; give only one.'],
		['solve setback R=.1 T=.04 angle=180', 'A bend of 180° has no setback'],
		['solve setback R=.1 T=.04 angle=181', 'angle must be 180° or less'],
		['solve developed-width R=.1 T=.04 legs=1,1,1 angles=90', 'give 2 legs for 1 bend'],
		['solve developed-width R=1 T=.04 legs=1,1 angles=90', 'shorter than its setback'],
		['solve rivet-row length=1 endMargin=2 greatestPitch=1', 'The end margins take up the whole'],
		['solve least-bend-radius alloy=2024-T3 T=.066', 'no row'],
		['solve edge-distance D=1/8 head=round', 'head is one of protruding, countersunk'],
		['solve shop-head D=', 'D is empty'],
		['task', 'Give one task number'],
		['task RL1-0004-1C', 'One character of that task number is off'],
		['task hello', 'That is not a task number'],
		['mark RL1-00C8-8D', 'this task asks needed'],
		['mark RL1-00C8-8D width=3', 'This task has no step width'],
		['mark RL1-00C8-8D length=5', 'Do you mean'],
		['mark RL1-00C8-8D length=abc', 'length:'],
		['families --loud', 'families takes no --loud']
	])('%s', async (line, says) => {
		const { code, out, err } = await run(line.split(' '));
		expect(code).toBe(2);
		expect(out).toBe('');
		expect(err).toContain(says);
		expect(err).not.toContain('\n');
	});

	test('10,000 characters and control characters are not echoed', async () => {
		const long = 'x'.repeat(10_000);
		for (const args of [
			[long],
			['solve', long],
			['task', long],
			['solve', 'setback', `${long}=1`],
			['solve', 'setback', `R=${long}`, 'T=.04', 'angle=90'],
			['solve', '\u0007\u001b[2J']
		]) {
			const { code, err } = await run(args);
			expect(code).toBe(2);
			expect(err.length).toBeLessThan(200);
			expect(err).not.toMatch(/\p{Cc}/u);
		}
	});

	test('no arguments bring down the program', async () => {
		const word = fc.oneof(
			fc.constantFrom(
				'solve',
				'mark',
				'task',
				'setback',
				'RL1-00C8-8D',
				'--json',
				'R=1',
				'length=3/8'
			),
			fc.string({ unit: 'binary', maxLength: 20 })
		);
		await fc.assert(
			fc.asyncProperty(fc.array(word, { maxLength: 5 }), async (args) => {
				const { code } = await run(args);
				expect([0, 2]).toContain(code);
			})
		);
	});
});

describe('the other commands', () => {
	test('words prints every sentence of a family, or of all', async () => {
		const [family] = (await json('words', 'rl')) as {
			code: string;
			words: Record<string, string[]>;
		}[];
		expect(family?.code).toBe('RL');
		expect(family?.words.rules).toContainEqual(expect.stringMatching(/^length.grip: The grip is/));
		for (const sort of ['slips', 'outcomes', 'stories', 'tolerances', 'hints', 'questions']) {
			expect(family?.words[sort]?.length, sort).toBeGreaterThan(0);
		}
		expect((await run(['words', 'rivets'])).out).toMatch(/^RT rivet-diameter\n/);
		expect((await run(['words', 'nobody'])).err).toBe('No family or topic is called nobody.');
	});

	test('words prints the sentences of every method that a family draws, each once', async () => {
		const [family] = (await json('words', 'RT')) as { words: Record<string, string[]> }[];
		const { slips = [], asks = [], cautions = [] } = family?.words ?? {};
		expect(slips).toContain('lowEnd twoForLow: 2T: the range begins at 2.5T.');
		expect(asks).toContain('above: Which stocked rivet comes next above 3T?');
		expect(cautions).toEqual(['Goggles on and the part clamped before you drill.']);
		expect(new Set(slips).size).toBe(slips.length);
	});

	test('help is printed without a command', async () => {
		expect((await run([])).out).toBe(usage);
	});

	test('families and methods list everything', async () => {
		const families = (await json('families')) as { code: string; method: string }[];
		const methods = (await json('methods')) as { method: string }[];
		expect(families.length).toBeGreaterThan(20);
		const known = methods.map(({ method }) => method);
		for (const { method } of families) expect(known).toContain(method);
	});

	test('prints the part of a chart that the task has as its figure', async () => {
		const { out } = await run(['task', 'RB2-0004-5X']);
		expect(out).toContain('Thickness  3/32  1/8   5/32  3/16  1/4\n');
		expect(out).toContain('  0.081      –     12.5  8.1   5.7   3.1\n');
		expect(out).toContain('  0.080 in stands in the row 0.081.\n');
		expect((await run(['task', 'RL1-00C8-8D'])).out).not.toContain('Thickness');
	});

	test('a task is told without its answer, and with it on request', async () => {
		expect(await json('task', 'RL1-00C8-8D')).not.toHaveProperty('steps');
		expect(await json('task', 'RL1-00C8-8D', '--answers')).toHaveProperty('steps');
	});

	test('mark says accept or rework, with exit code 0 for both', async () => {
		const task = (await json('task', 'RL1-00C8-8D', '--answers')) as {
			steps: { key: string; text: string }[];
		};
		const right = ['needed', 'length'].map(
			(asked) => `${asked}=${task.steps.find(({ key }) => key === asked)?.text.split(' (')[0]}`
		);
		expect(await json('mark', 'RL1-00C8-8D', ...right)).toMatchObject({ accepted: true });
		const wrong = await json('mark', 'RL1-00C8-8D', 'length=4 in');
		expect(wrong).toMatchObject({
			accepted: false,
			answers: [{ key: 'length', verdict: 'rework' }]
		});
	});
});
