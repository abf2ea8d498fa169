import { describe, expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { shopHeadCheck } from '../../../src/lib/engine/methods/shop-head-check.ts';
import { type Row, testTold } from './told-rows.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

/*
 * What is told about sums that went wrong in one digit, from one member on or in the last place. Above
 * each, what was done.
 */

const row = { length: 4.5, endMargin: 0.25, greatestPitch: 0.875 };
const channel = {
	code: 'BW',
	id: 'developed-width',
	given: { R: 0.15625, T: 0.071, legs: [1.0625, 2.3125, 1.0625], angles: [90, 90] },
	asked: ['width']
};
const drills = {
	code: 'HP',
	id: 'drill-for-rivet',
	given: { D: 5 / 32 },
	asked: ['pilot', 'final', 'clearance']
};

const rows: readonly Row[] = [
	// 3 × .081 is .243; .240 was rounded.
	...[
		['.247', 'digits:one'],
		['.343', 'digits:one'],
		['.24', 'rounding:end'],
		['.244', 'right'],
		['.367', 'cannot tell']
	].map(([threeT = '', told = '']): Row => ({
		code: 'RT',
		id: 'rivet-diameter',
		given: { thickest: 0.081 },
		asked: ['threeT', 'diameter'],
		typed: { threeT, diameter: '1/4' },
		told: { threeT: told, diameter: 'right' }
	})),
	// Stepped off rightly to the third hole, and .7 from there for .8; or to the last hole alone.
	{
		code: 'LR',
		id: 'rivet-row',
		given: row,
		asked: ['count', 'pitch', 'positions'],
		typed: { count: '6', pitch: '.8', positions: '.25, 1.05, 1.85, 2.55, 3.35, 4.15' },
		told: { count: 'right', pitch: 'right', positions: 'order:shifted' }
	},
	...['.25, 1.05, 1.85, 2.65, 3.45, 4.35', '.25, 1.15, 1.95, 2.75, 3.55, 4.35'].map(
		(positions): Row => ({
			code: 'LR',
			id: 'rivet-row',
			given: row,
			asked: ['count', 'pitch', 'positions'],
			typed: { count: '6', pitch: '.8', positions },
			told: { count: 'right', pitch: 'right', positions: 'cannot tell' }
		})
	),
	// One allowance alone: 3.5289 + .2950 rounded, cut off or carried otherwise; .0003 more is something else.
	...['3.8233', '3.8234', '3.8235', '3.8236'].map((width): Row => ({
		...channel,
		typed: { width },
		told: { width: 'oneAllowance' }
	})),
	{ ...channel, typed: { width: '3.8238' }, told: { width: 'cannot tell' } },
	// The second flange and its bend forgotten: .8353 + 1.8580 + .2950.
	{ ...channel, typed: { width: '2.9882' }, told: { width: 'legAndBendLeftOut' } },
	// .159 − .15625 is .00275, or .003 of a shank of .156; .0035 is the clearance of another rivet.
	...[
		['.0028', 'right'],
		['.003', 'right'],
		['.0035', 'cannot tell'],
		['.002', 'cannot tell']
	].map(([clearance = '', told = '']): Row => ({
		...drills,
		typed: { pilot: '5/32', final: 'No. 21', clearance },
		told: { pilot: 'right', final: 'right', clearance: told }
	})),
	// A square bend has no row of a chart that could be missed: K is 1 there.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.0625, T: 0.04, angle: 90 },
		asked: ['setback'],
		typed: { setback: '.104' },
		told: { setback: 'cannot tell' }
	}
];

describe('nearly right', () => {
	testTold(rows);

	test('is said plainly', async () => {
		const task = await taskOf('LR', rivetRow, row, ['count', 'pitch', 'positions']);
		const said = (key: string, text: string) => {
			const verdict = verdictsOn(task, { [key]: text })[key];
			return verdict && sayVerdict(task, verdict, key);
		};
		expect(said('positions', '.25, 1.05, 1.85, 2.55, 3.35, 4.15')).toBe(
			'The first of them are right; from one on, all are off by as much: work that one again.'
		);
	});

	test('a word that follows from a wrong number is not called correct', async () => {
		const given = { D: 1 / 8, width: 0.241, height: 0.063 };
		const task = await taskOf('SC', shopHeadCheck, given, ['mostWidth', 'judgement']);
		// By 2D, 0.25 in, the head that is too wide would be left.
		const { judgement } = verdictsOn(task, { mostWidth: '.25', judgement: 'accept' });
		expect(judgement).toEqual({ kind: 'accept', carried: true });
		expect(judgement && sayVerdict(task, judgement, 'judgement')).toBe(
			'That follows from your earlier number, which is off.'
		);
	});
});
