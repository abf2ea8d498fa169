import { describe, expect, test } from 'vitest';
import { sayCause, sayTogether, sayVerdict, stepOf } from '../../../src/lib/engine/marking/say.ts';
import {
	type Cause,
	choicesIn,
	isSeldom,
	nameOf,
	offered,
	stepOfSlip
} from '../../../src/lib/engine/marking/verdict.ts';
import { shelfTask } from './shelf.ts';
import { verdictsOn } from './typed-answers.ts';

const slip = (...slips: string[]): Cause => ({ kind: 'slip', slips });
const inMm: Cause = { kind: 'slip', slips: ['oneMargin'], also: 'mm-for-inch' };
const point: Cause = { kind: 'digits', how: 'point' };
const unknown: Cause = { kind: 'unknown' };

describe('causes that explain an answer equally well', () => {
	test.each<[string, readonly Cause[], Cause]>([
		['one is it', [point], point],
		['none', [], unknown],
		['two slips', [slip('down'), slip('more')], { kind: 'either', slips: ['down', 'more'] }],
		[
			'three slips',
			[slip('down'), slip('more'), slip('byHoles')],
			{ kind: 'either', slips: ['down', 'more', 'byHoles'] }
		],
		['four are too many', ['a', 'b', 'c', 'd'].map((id) => slip(id)), unknown],
		[
			'a slip, and one of another kind',
			[slip('down'), point],
			{ kind: 'either', slips: ['down'], causes: [slip('down'), point] }
		],
		[
			'two slips together, or one',
			[slip('down', 'byHoles'), slip('more')],
			{
				kind: 'either',
				slips: ['down', 'byHoles', 'more'],
				causes: [slip('down', 'byHoles'), slip('more')]
			}
		],
		[
			'a slip in millimetres, or one',
			[inMm, slip('more')],
			{ kind: 'either', slips: ['oneMargin', 'more'], causes: [inMm, slip('more')] }
		]
	])('%s', (_, causes, cause) => {
		expect(offered(causes)).toEqual(cause);
		const choices = causes.length > 1 && causes.length < 4 ? causes : [];
		expect(choicesIn(offered(causes))).toEqual(choices);
	});

	test('are slips of the method, or of none', () => {
		const { method } = shelfTask;
		expect([isSeldom(method, 'threeSeldom'), isSeldom(method, 'three')]).toEqual([true, false]);
		expect([isSeldom(method, 'gone'), stepOfSlip(method, 'gone')]).toEqual([false, '']);
	});

	test('have one name where they are one', () => {
		expect(nameOf(slip('down'))).toBe(nameOf(slip('down')));
		expect(nameOf(slip('down'))).not.toBe(nameOf(slip('more')));
	});
});

const either = (...causes: Cause[]): Cause => offered(causes);

describe('what is said of a cause, and the step it lies in', () => {
	test.each<[string, Cause, string, string | null]>([
		['run', slip('oneMargin'), 'One margin only.', 'run'],
		['pitch', slip('oneMargin', 'down'), 'One margin only. And: Rounded down.', 'run'],
		[
			'run',
			inMm,
			'One margin only. And: That is the right size in millimetres, read as inches.',
			'run'
		],
		[
			'pitch',
			either(slip('down'), slip('more')),
			'One of two: Rounded down. Or: One space too many.',
			'spaces'
		],
		[
			'pitch',
			either(slip('down'), slip('more'), slip('byHoles')),
			'One of three: Rounded down. Or: One space too many. Or: Divided by the holes.',
			null
		],
		[
			'pitch',
			either(slip('byHoles'), point),
			'One of two: Divided by the holes. Or: The digits are right; the decimal point is not.',
			'pitch'
		],
		['grip', { kind: 'digits', how: 'swapped' }, 'Two digits have changed places.', 'grip'],
		['least', { kind: 'breaks', says: 'A bar is 24 in long.' }, 'A bar is 24 in long.', 'least'],
		['least', { kind: 'other-step', step: 'grip' }, 'That is “Grip”, not “Least edge”.', 'least'],
		['least', { kind: 'other-step', step: 'grip', swapped: true }, 'Swapped with “Grip”.', 'least'],
		['least', { kind: 'other-step', step: 'gone' }, 'That is “gone”, not “Least edge”.', 'least'],
		['least', { kind: 'factor', of: 'D', times: '2' }, '2D is the rule; multiply by D.', 'least'],
		['least', { kind: 'rounding', how: 'end' }, 'Rounded too coarsely: keep thousandths.', 'least'],
		[
			'least',
			{ kind: 'unit', unit: 'thousandths' },
			'That is the right size in thousandths; write it as inches.',
			'least'
		],
		[
			'least',
			unknown,
			'This number does not tell what went wrong; work this step once more.',
			null
		],
		[
			'positions',
			unknown,
			'These numbers do not tell what went wrong; work this step once more.',
			null
		],
		// A record of an earlier version may name what is gone.
		[
			'least',
			{ kind: 'factor', of: 'gone', times: '2' },
			'2 is the factor of the rule; multiply it by “gone”.',
			'least'
		],
		['least', slip('gone'), '', null],
		['least', slip(), '', null],
		['least', { kind: 'unit', unit: 'gone' }, '', 'least']
	])('%s, %j', (key, cause, says, step) => {
		expect(sayCause(shelfTask, cause, key)).toBe(says);
		expect(stepOf(shelfTask, cause, key)).toBe(step);
		expect(sayVerdict(shelfTask, { kind: 'rework', cause }, key)).toBe(says);
	});

	test('steps are to be worked only where some were not asked for', () => {
		const pitchAlone = { ...shelfTask, drawn: { ...shelfTask.drawn, asked: ['pitch'] } };
		expect(sayCause(pitchAlone, unknown, 'pitch')).toBe(
			'This number alone does not tell which step went wrong; work the steps one by one.'
		);
	});

	test('of several entries it is said in the plural', () => {
		const alone = { ...shelfTask, drawn: { ...shelfTask.drawn, asked: ['pitch'] } };
		expect(sayTogether(alone, { kind: 'rework', cause: unknown }, 'pitch')).toBe(
			'These numbers alone do not tell which step went wrong; work the steps one by one.'
		);
		const slipped = { kind: 'rework', cause: slip('down') } as const;
		expect(sayTogether(shelfTask, slipped, 'count')).toBe('Rounded down.');
	});

	test('no steps are to be worked where all that this one is worked from was entered right', () => {
		const both = { ...shelfTask, drawn: { ...shelfTask.drawn, asked: ['run', 'spaces', 'pitch'] } };
		const { run = '', spaces = '' } = Object.fromEntries(
			['run', 'spaces'].map((key) => [key, String(both.right[key])])
		);
		const pitch = verdictsOn(both, { run, spaces, pitch: '1.977' }).pitch;
		expect(pitch && sayVerdict(both, pitch, 'pitch')).toBe(
			'This number does not tell what went wrong; work this step once more.'
		);
		const alone = verdictsOn(both, { run, pitch: '1.977' }).pitch;
		expect(alone && sayVerdict(both, alone, 'pitch')).toContain('work');
		expect(alone).toEqual({ kind: 'rework', cause: unknown });
	});
});
