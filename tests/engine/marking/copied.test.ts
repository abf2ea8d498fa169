import { describe, expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import { length, number } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { method, slip as made, step as worked } from '../../../src/lib/engine/solver/write.ts';
import { thousandths } from '../../../src/lib/engine/trade/tolerances.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { compiledHere } from '../solver/compile-here.ts';
import { shelfTask } from './shelf.ts';
import { causeIn, taskOf, verdictsOn } from './typed-answers.ts';

/* Grip 0.113 of 0.05 and 0.063, run 9.5, 5 spaces, 6 holes, pitch 1.9; greatest gap 2.1, margin 0.4. */

type Typed = Readonly<Record<string, string>>;
const cause = (key: string, typed: Typed) => causeIn(shelfTask, typed, key);
const step = (key: string) => ({ kind: 'other-step', step: key });
const slip = (...slips: string[]) => ({ kind: 'slip', slips });

function said(task: Task, key: string, text: string): string {
	const verdict = verdictsOn(task, { [key]: text })[key];
	return verdict ? sayVerdict(task, verdict, key) : '';
}

describe('a number that stands in the task', () => {
	test('is told where nothing else leads to it', () => {
		expect(cause('pitch', { pitch: '2.1' })).toEqual(step('gap'));
		expect(cause('grip', { grip: '.05' })).toEqual(step('layers'));
		// The larger layer alone is a slip.
		expect(cause('grip', { grip: '.063' })).toEqual(slip('oneLayer'));
	});

	test('is the very number, and of the same sort', () => {
		expect(cause('pitch', { pitch: '2.102' })).toEqual({ kind: 'unknown' });
		// No given is a number of holes.
		expect(cause('count', { count: '13' })).toEqual({ kind: 'unknown' });
		expect(cause('positions', { positions: '2.1, 2.1, 2.1, 2.1, 2.1, 2.1' })).toEqual({
			kind: 'unknown'
		});
	});

	test('goes by the label that the task gives it', () => {
		expect(said(shelfTask, 'pitch', '2.1')).toBe(
			'That is “Greatest gap”, as given; work out what is asked for.'
		);
		expect(said(shelfTask, 'grip', '.05')).toBe(
			'That is one of “Layers”, as given; work out what is asked for.'
		);
		const labels = { gap: 'Widest gap', layers: ['Top', 'Bottom'] };
		const task = { ...shelfTask, drawn: { ...shelfTask.drawn, labels } };
		expect(said(task, 'pitch', '2.1')).toContain('“Widest gap”');
		expect(said(task, 'grip', '.05')).toContain('“Layers”');
	});
});

describe('a number that stands in another field', () => {
	test('is told as a copy where it is wrong there as well', () => {
		const typed = { least: '.71', grip: '.71' };
		expect(cause('least', typed)).toEqual({ kind: 'unknown', here: true });
		expect(cause('grip', typed)).toEqual(step('least'));
		expect(cause('grip', { grip: '.71' })).toEqual({ kind: 'unknown', here: true });
		expect(cause('grip', { least: '.72', grip: '.71' })).toEqual({ kind: 'unknown', here: true });
	});

	test('is that of the step which has it exactly, before one that it is near', () => {
		// 0.38 is near the least edge, 0.375, and 0.4 the margin; to hundredths both may be meant.
		expect(cause('pitch', { pitch: '.38' })).toEqual(step('least'));
		const near = { ...shelfTask, right: { ...shelfTask.right, least: 0.38 } };
		expect(causeIn(near, { pitch: '.38' }, 'pitch')).toEqual(step('least'));
		const both = { ...shelfTask, right: { ...shelfTask.right, least: 0.38, grip: 0.3815 } };
		expect(causeIn(both, { pitch: '.38' }, 'pitch')).toEqual(step('least'));
		const other = { ...shelfTask, right: { ...shelfTask.right, least: 0.3815, grip: 0.38 } };
		expect(causeIn(other, { pitch: '.38' }, 'pitch')).toEqual(step('grip'));
	});

	test('is no exchange where it is right there', () => {
		expect(cause('least', { least: '.113', grip: '.113' })).toEqual(step('grip'));
		// Alone, 5 holes may also be a run rounded down.
		expect(cause('count', { spaces: '5', count: '5' })).toEqual(slip('spacesForHoles'));
	});

	test('is an exchange, whatever slips lead to it, where both are wrong', () => {
		const typed = { spaces: '6', count: '5' };
		expect(cause('spaces', typed)).toEqual({ ...step('count'), swapped: true });
		expect(cause('count', typed)).toEqual({ ...step('spaces'), swapped: true });
	});
});

/** First .2, then .3, and .2 again further down; the width is .2 as well. */
const twin = await taskOf(
	'LR',
	compiledHere(
		method({
			id: 'made-up-twin',
			title: 'Twins',
			given: { T: given(length, 'Thickness'), width: given(length, 'Width') },
			steps: {
				first: worked('2 * T', 'First', { tolerance: thousandths }),
				then: worked('3 * T', 'Then', {
					tolerance: thousandths,
					slips: { byWidth: made('width', 'By the width.') }
				}),
				last: worked('T + 0.5 * width', 'Last', { tolerance: thousandths }),
				ratio: worked('then / width', 'Ratio', { kind: number, tolerance: thousandths })
			}
		})
	),
	{ T: 0.1, width: 0.2 }
);

describe('a slip that leads to the result of another step', () => {
	const told = (typed: Typed) => causeIn(twin, typed, 'then');

	test('is told where that step was not entered, or otherwise', () => {
		expect(told({ then: '.200' })).toEqual(slip('byWidth'));
		expect(told({ first: '.25', then: '.200' })).toEqual(slip('byWidth'));
	});

	test('is less likely than an entry typed twice', () => {
		expect(told({ first: '.200', then: '.200' })).toEqual(step('first'));
	});

	test('is told where the step stands further down', () => {
		const late = { ...twin, right: { ...twin.right, first: 0.21 } };
		expect(causeIn(late, { then: '.200', last: '.200' }, 'then')).toEqual(slip('byWidth'));
	});

	test('may be of another sort only where that step is asked', () => {
		// A ratio of 1.5 is no length, but for one whose field stands beside it.
		expect(told({ then: '1.5' })).toEqual(step('ratio'));
		expect(causeIn(twin, { ratio: '.3' }, 'ratio')).toEqual(step('then'));
		const alone = { ...twin, drawn: { ...twin.drawn, asked: ['ratio'] } };
		expect(causeIn(alone, { ratio: '.3' }, 'ratio')).toEqual({ kind: 'unknown' });
		// A factor is typed for what it is to be multiplied by.
		const other = { ...twin, drawn: { ...twin.drawn, asked: ['then'] } };
		expect(causeIn(other, { then: '1.5' }, 'then')).toEqual(step('ratio'));
	});
});

describe('a right entry that was not worked on with', () => {
	test('leaves the slip made instead', () => {
		expect(cause('pitch', { run: '9.5', pitch: '1.98' })).toEqual(slip('oneMargin'));
		expect(cause('pitch', { run: '9.5', spaces: '5', pitch: '1.98' })).toEqual(slip('oneMargin'));
	});

	test('is no reason where another entry speaks against it', () => {
		// Four spaces make five holes, and six were counted.
		expect(cause('pitch', { spaces: '5', count: '6', pitch: '2.375' })).toEqual({
			kind: 'unknown'
		});
	});
});
