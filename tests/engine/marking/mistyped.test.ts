import { describe, expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import { length, rivetLength } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { method, slip, step } from '../../../src/lib/engine/solver/write.ts';
import { stockedSize, thousandths } from '../../../src/lib/engine/trade/tolerances.ts';
import { compiledHere } from '../solver/compile-here.ts';
import { shelfTask } from './shelf.ts';
import { causeIn, taskOf, verdictsOn } from './typed-answers.ts';

const unknown = { kind: 'unknown' };
/** The same of a step that is worked from the givens alone. */
const here = { ...unknown, here: true };
const digits = (how: string) => ({ kind: 'digits', how });

/** Gaps so small that there are 14 spaces and 15 holes: 9.5 / 0.7 is 13.57. */
const many = await taskOf('LR', shelfTask.method, { ...shelfTask.drawn.given, gap: 0.7 });

describe('one digit too few or too many', () => {
	test.each([
		// Least edge .375.
		['.35', digits('dropped')],
		['.75', digits('dropped')],
		['.3775', digits('doubled')],
		['.3375', digits('doubled')],
		// The last one left out is cut off; another one in between is none of these.
		['.37', { kind: 'rounding', how: 'cut' }],
		['.3475', here],
		['.34', here],
		['3/5', here]
	])('%s: %j', (text, cause) => {
		expect(causeIn(shelfTask, { least: text }, 'least')).toEqual(cause);
	});

	test('is said plainly', () => {
		const said = (text: string) => {
			const verdict = verdictsOn(shelfTask, { least: text }).least;
			return verdict && sayVerdict(shelfTask, verdict, 'least');
		};
		expect(said('.35')).toBe('A digit was left out.');
		expect(said('.3775')).toBe('A digit was typed twice.');
	});

	test.each([
		['115', digits('doubled')],
		// 14.6 with its point lost would round to 15, and 15.9 be cut to it; 16.4 comes to neither.
		['146', digits('point')],
		['159', digits('point')],
		['160', unknown],
		['164', unknown],
		['1', unknown]
	])('of a whole number, 15: %s is %j', (text, cause) => {
		expect(many.right.count).toBe(15);
		expect(causeIn(many, { count: text }, 'count')).toEqual(cause);
	});

	test('and a point that is lost, with the places that were typed', () => {
		// 9.5 in 14 spaces is 0.678571…
		expect(causeIn(many, { pitch: '6.79' }, 'pitch')).toEqual(digits('point'));
		expect(causeIn(many, { pitch: '67.9' }, 'pitch')).toEqual(digits('point'));
		expect(causeIn(many, { pitch: '679' }, 'pitch')).toEqual({
			kind: 'unit',
			unit: 'thousandths'
		});
	});

	test('is not looked for in a number of one digit', () => {
		expect(causeIn(shelfTask, { count: '66' }, 'count')).toEqual(unknown);
	});
});

describe('worked in millimetres', () => {
	const pin = compiledHere(
		method({
			id: 'made-up-pin',
			title: 'A pin',
			given: { T: given(length, 'Thickness') },
			steps: {
				needed: step('2 * T', 'Needed', { tolerance: thousandths }),
				length: step('upTo(needed, 1/16 in)', 'Length', {
					kind: rivetLength,
					tolerance: stockedSize,
					slips: {
						more: slip('upTo(needed, 1/16 in) + (1/16 in)', 'One more.'),
						down: slip('downTo(needed, 1/16 in)', 'Down.'),
						twice: slip('2 * upTo(needed, 1/16 in)', 'Twice.')
					}
				}),
				far: step('3 * needed', 'Far', { tolerance: thousandths })
			}
		})
	);

	test('a length is rounded to millimetres and not up to a stocked size', async () => {
		// 0.34 in is 8.636 mm, and the size above it 9.525 mm.
		const task = await taskOf('LR', pin, { T: 0.17 });
		const metric = { kind: 'rounding', how: 'metric' };
		expect(causeIn(task, { length: '9 mm' }, 'length')).toEqual(metric);
		expect(causeIn(task, { length: '8.5 mm' }, 'length')).toEqual(metric);
		expect(causeIn(task, { length: '10 mm' }, 'length')).toEqual(metric);
		expect(causeIn(task, { length: '12 mm' }, 'length')).toEqual(unknown);
		// The same in inches was hardly measured so.
		expect(causeIn(task, { length: '.354' }, 'length')).toEqual(unknown);
		// A step further on, 25.908 mm, is not what it is made of.
		expect(causeIn(task, { length: '26.0 mm' }, 'length')).toEqual(unknown);
	});
});
