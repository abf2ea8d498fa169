import { describe, expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import { bendAllowance } from '../../../src/lib/engine/methods/bend-allowance.ts';
import { developedWidth } from '../../../src/lib/engine/methods/developed-width.ts';
import { type Row, testTold } from './told-rows.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

/* What is said of a number that stands elsewhere, or in another order, and of one that tells nothing. */

const bend = { R: 0.125, T: 0.05, angle: 60 };
/** Flats .8575, .8400 and .4825; the setback of both bends .2675, the allowance .4232. */
const channel = { R: 0.1875, T: 0.08, legs: [1.125, 1.375, 0.75], angles: [90, 90] };

describe('said', () => {
	test.each<[string[], string, string, string]>([
		// 0.0078 × .05 × 60 is a step on the way, and nobody asked for it.
		[
			['allowance'],
			'allowance',
			'.0234',
			'That is “Thickness term”, a step on the way to “Bend allowance”.'
		],
		// Where it is asked for as well, it is another answer.
		[
			['forThickness', 'allowance'],
			'allowance',
			'.0234',
			'That is “Thickness term”, not “Bend allowance”.'
		],
		// What comes after it does not lead to it.
		[['forRadius'], 'forRadius', '.1541', 'That is “Bend allowance”, not “Radius term”.'],
		[
			['allowance'],
			'allowance',
			'.05',
			'That is “Thickness”, as given; work out what is asked for.'
		],
		[
			['allowance'],
			'allowance',
			'.9',
			'This number alone does not tell which step went wrong; work the steps one by one.'
		],
		[
			['forRadius'],
			'forRadius',
			'.9',
			'This number does not tell what went wrong; work this step once more.'
		]
	])('%j: %s of %s: %s', async (asked, key, text, says) => {
		const task = await taskOf('BA', bendAllowance, bend, asked);
		const verdict = verdictsOn(task, { [key]: text })[key];
		expect(verdict && sayVerdict(task, verdict, key)).toBe(says);
	});

	test('of a list in its own words', async () => {
		const task = await taskOf('BW', developedWidth, channel, ['flats', 'width']);
		const said = (text: string) => {
			const { flats } = verdictsOn(task, { flats: text });
			return flats && sayVerdict(task, flats, 'flats');
		};
		expect(said('.1, .2, .3')).toBe(
			'These numbers alone do not tell which step went wrong; work the steps one by one.'
		);
		expect(said('.840, .8575, .4825')).toBe('The right values, but not in the order of the task.');
	});
});

const rows: readonly Row[] = [
	// Both flats are .8575: cut short, they are no list from the other end, and nothing of two mistakes.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.1875, T: 0.08, legs: [1.125, 1.125], angles: [90] },
		asked: ['flats', 'width'],
		typed: { flats: '.8, .8' },
		told: { flats: 'cannot tell' }
	}
];

testTold(rows);
