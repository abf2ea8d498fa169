import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { PanelError } from '../../src/lib/engine/panel/read-panel.ts';
import { planPanel } from '../../src/lib/engine/panel/plan.ts';

const folder = mkdtempSync(join(tmpdir(), 'panel-'));

function saved(content: unknown): string {
	const path = join(folder, 'panel.json');
	writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
	return path;
}

const frame = { name: 'frame 1', runs: 'across', at: '6in', flange: '3/4in', thickness: '0.040in' };
const side = {
	panel: { length: '22in', width: '14in', thickness: '0.032in', alloy: '2024-T3' },
	members: [
		{ ...frame, rows: 1 },
		{ ...frame, name: 'frame 2', at: '16in' },
		{ name: 'stringer', runs: 'along', at: '7in', flange: '5/8in', thickness: '0.032in' }
	],
	rivet: { head: 'universal' },
	greatestPitch: '1in'
};

interface Data {
	readonly holes: readonly { readonly row: string }[];
	readonly problems: readonly string[];
	readonly [key: string]: unknown;
}

async function json(content: unknown, ...more: string[]): Promise<Data> {
	const { code, out, err } = await run(['panel', saved(content), '--json', ...more]);
	expect({ code, err }).toEqual({ code: 0, err: '' });
	return JSON.parse(out) as Data;
}

describe('panel', () => {
	test('prints a side panel over two frames and a stringer as the README says', async () => {
		const data = await json(side);
		// Frames: 15 each, 7 and 7 spaces about the stringer. Stringer: 6, 10 and 6 spaces about the
		// frames, 23 holes, 2 of them shared: 15 + 15 + 21.
		expect(data.holes).toHaveLength(51);
		expect(data.holes[7]).toEqual({
			id: 'A8',
			x: 6,
			y: 7,
			row: 'frame 1',
			crosses: 'stringer',
			layers: [0.032, 0.04, 0.032],
			parts: ['Panel', 'frame 1', 'stringer'],
			grip: 0.104,
			diameter: 0.125,
			rivet: 'MS20470AD4-5'
		});
		expect(data).toMatchObject({
			version: 1,
			rivets: [{ number: 'MS20470AD4-5', count: 51, spares: 6 }],
			drills: [{ rivet: 0.125, pilotName: '1/8 in', finalName: 'No. 30', holes: 51 }],
			blank: { length: 22, width: 14 },
			stock: { count: 3, turned: true, sheet: { length: 48, width: 24 } },
			weight: 0.9856,
			problems: []
		});
	});

	test('prints the same as text, and its files', async () => {
		const path = saved(side);
		const text = (await run(['panel', path])).out;
		expect(text).toContain('MS20470AD4-5  51 holes  take 57');
		expect(text).toContain('a certificated mechanic signs');
		expect((await run(['panel', path, '--csv'])).out.split('\r\n')).toHaveLength(52);
		expect((await run(['panel', path, '--csv', '--list', 'rivets'])).out).toContain('57');
		expect((await run(['panel', path, '--svg'])).out).toMatch(/^<svg /);
		expect((await run(['panel', path, '--dxf'])).out).toMatch(/^0\r\nSECTION/);
		const { svg } = await json(side, '--svg');
		expect(svg).toMatch(/^<svg /);
	});

	test('the published schema is the one of the reader', async () => {
		const { out } = await run(['panel', '--schema']);
		const published: unknown = JSON.parse(readFileSync('static/panel-1.schema.json', 'utf8'));
		expect(published).toEqual(JSON.parse(out));
	});

	// One sentence each, and the rest is worked.
	test.each([
		[
			'a frame outside the panel',
			{ at: '36in' },
			'frame 1, place: 36 in is outside the panel, which is 22 in that way; correct it.',
			37
		],
		[
			'a flange too narrow for two rows',
			{ rows: 2 },
			'frame 1, flange width: 3/4 in is too narrow for two rows, which take 13/16 in; one row is laid out.',
			51
		],
		[
			'a gauge that is in no table',
			{ thickness: '0.039in' },
			'frame 1, thickness: 0.039 in is in no gauge table; the nearest are 0.032 in and 0.040 in.',
			51
		],
		[
			'a thickness that is no length',
			{ thickness: 'thin' },
			'frame 1, thickness: That does not read as a length. Write it like 1/8 in or 0.125.',
			37
		],
		[
			'mixed units in one list',
			{ drilled: ['1in', '50mm'] },
			'frame 1, drilled holes: in and mm stand in one list; write all in the same unit.',
			37
		],
		[
			'a field that is none',
			{ colour: 'red' },
			expect.stringContaining('there is no field “colour”'),
			51
		],
		[
			'a flange below zero',
			{ flange: '-1in' },
			expect.stringContaining('frame 1, flange width'),
			37
		]
	])('%s', async (_, change, sentence, holes) => {
		const [first, ...others] = side.members;
		const data = await json({ ...side, members: [{ ...first, ...change }, ...others] });
		expect(data.problems).toEqual([sentence]);
		expect(data.holes).toHaveLength(holes);
		expect(data.weight).toBe(0.9856);
	});

	test.each([
		[
			'a pitch of zero',
			{ greatestPitch: '0in' },
			'Rows, greatest pitch: it must be more than zero.'
		],
		['no pitch', { greatestPitch: undefined }, 'Rows, greatest pitch: it is missing; write one.'],
		[
			'a head that is none',
			{ rivet: { head: 'round' } },
			'Rivet, head: it is one of universal, countersunk; choose one.'
		],
		[
			'an alloy without density',
			{ panel: { ...side.panel, alloy: '9999-T3' } },
			expect.stringContaining('has no row for 9999-T3')
		],
		[
			'a stock sheet that is too small',
			{ stock: [{ length: 12, width: 12 }] },
			expect.stringContaining('fits no stock sheet')
		],
		['members that are no list', { members: 'frames' }, 'List of members: write a list, [ … ].']
	])('%s', async (_, change, sentence) => {
		const data = await json({ ...side, ...change });
		expect(data.problems).toEqual([sentence]);
		expect(data.blank).toMatchObject({ length: 22 });
	});

	test('five thousand holes are left out, and told', async () => {
		const data = await json({
			...side,
			panel: { ...side.panel, length: '100ft', width: '48in' },
			greatestPitch: '0.5in',
			stock: [{ length: '100ft', width: '48in' }]
		});
		expect(data.problems).toContain(
			'A row holds 1000 holes; stringer would go over that and is left out: make the greatest pitch larger.'
		);
		expect(new Set(data.holes.map(({ row }) => row))).toEqual(new Set(['frame 1', 'frame 2']));
	});

	test.each([
		['{"panel": {"length": ', 'There is no JSON in'],
		['[]', 'A panel file is an object'],
		[{ ...side, panel: { ...side.panel, length: 'long' } }, 'Panel, length: That does not read'],
		[{}, 'Panel, length: it is missing; write one.']
	])('nothing can be worked from %j', async (content, sentence) => {
		const { code, out, err } = await run(['panel', saved(content)]);
		expect({ code, out }).toEqual({ code: 2, out: '' });
		expect(err).toContain(sentence);
	});

	test('whatever a file holds, it is worked or refused by one sentence', () =>
		fc.assert(
			fc.asyncProperty(
				fc.object({
					key: fc.constantFrom(
						...Object.keys(side),
						'length',
						'width',
						'at',
						'flange',
						'bends',
						'__proto__'
					),
					values: [fc.constantFrom('1in', '22in', '0.04in', 'across', 3, -1, 1e9, null, '', '⅜')],
					maxDepth: 3
				}),
				async (raw) => {
					try {
						const { problems } = await planPanel({ ...raw, panel: { ...side.panel } });
						expect(problems.every(({ says }) => says.length < 400)).toBe(true);
					} catch (error) {
						expect(error).toBeInstanceOf(PanelError);
					}
				}
			),
			{ numRuns: 200, seed: 10 }
		));
});
