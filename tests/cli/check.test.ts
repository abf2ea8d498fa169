import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';

const inches = (number: number) => ({ number, unit: 'in' });
const part = ['check', 'edge-distance', 'D=1/8', 'head=protruding'];

async function json(...args: string[]): Promise<Record<string, unknown>> {
	const { code, out, err } = await run([...args, '--json']);
	expect({ code, err }).toEqual({ code: 0, err: '' });
	return JSON.parse(out);
}

describe('check', () => {
	test('prints steps, limits and own results as the README says', async () => {
		const own = ['--own', 'least=1/4', 'greatest=3/8', '--tool', 'caliper'];
		const found = await json(...part, 'measured=0.251,0.236', ...own);
		expect(found).toMatchObject({
			method: 'edge-distance',
			steps: [
				{ key: 'factor', value: { number: 2, unit: '' }, text: '2' },
				{ key: 'least', value: inches(0.25), text: '1/4 in' },
				{ key: 'preferred', value: inches(0.3125), text: '5/16 in' },
				{ key: 'greatest', value: inches(0.5), text: '1/2 in' }
			],
			own: [
				{ key: 'least', entry: '1/4', read: '1/4 in', verdict: 'accept', carried: false },
				{
					key: 'greatest',
					entry: '3/8',
					read: '3/8 in',
					verdict: 'rework',
					cause: { kind: 'slip', slips: ['pitchForGreatest'] },
					says: '3D is the minimum pitch; the maximum edge distance is 4D.'
				}
			],
			verdict: 'fails',
			summaries: [{ what: 'Edge distance', of: 2, mean: inches(0.2435), spread: inches(0.015) }]
		});
		expect(found['limits']).toMatchObject([
			{
				what: 'Edge distance, hole 1',
				value: inches(0.251),
				limit: inches(0.25),
				margin: inches(0.001),
				verdict: 'undecided',
				source: expect.stringContaining('FAA-H-8083-31B, ch. 4, pp. 4-33, 4-34')
			},
			{ what: 'Edge distance, hole 1', limit: inches(0.5), verdict: 'holds' },
			{ what: 'Edge distance, hole 2', margin: inches(-0.014), verdict: 'fails' },
			{ what: 'Edge distance, hole 2', verdict: 'holds' }
		]);
	});

	test('what differs from head to head is told for each', async () => {
		const found = await json(
			'check',
			'shop-head-check',
			'D=1/8',
			'width=.19,.21',
			'height=.06,.04'
		);
		expect(found['steps']).toContainEqual({
			key: 'judgement',
			value: ['accept', 'replace'],
			text: 'accept, replace'
		});
	});

	test('in words, with what to do and when to stop', async () => {
		const { code, out } = await run([...part, 'measured=0.29,0.236', '--tool', 'caliper']);
		expect(code).toBe(0);
		expect(out).toContain('FAILS  Hole 2: edge distance 0.236 in is 1.89D, below 2D by 0.014 in');
		expect(out).toContain('Hole 2: leave the hole as it is');
		expect(out).toContain('Stop and ask');
		expect(out).toContain('Practice numbers only, not repair data.');
	});

	test.each([
		[['check'], 'Name a method and what was measured.'],
		[['check', 'edge'], 'Nothing is measured for edge; check one of blank-size'],
		[[...part, 'mesured=0.3'], 'takes no mesured; it takes D, head, measured.'],
		[
			[...part, 'measured=0.3', '--tool', 'ruler'],
			'There is no instrument ruler; name one of scale'
		],
		[[...part, 'measured=0.3', '--own', 'lest=1'], 'has no result lest; it has factor, least'],
		[[...part, 'measured=0.3', '--own', 'least=x'], 'least: '],
		[[...part, 'measured=0'], 'more than zero'],
		[
			['check', 'shop-head-check', 'D=1/8', 'width=.19', 'height=.3'],
			'cannot be more than the 1.5D'
		],
		[['check', 'least-bend-radius', 'alloy=2024-T3', 'T=9', 'measured=1/8'], '']
	])('%j is refused in one sentence', async (args, says) => {
		const { code, out, err } = await run(args);
		expect({ code, out }).toEqual({ code: 2, out: '' });
		expect(err).toContain(says);
		expect(err.split('\n')).toHaveLength(1);
	});
});
