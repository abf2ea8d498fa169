import { describe, expect, test } from 'vitest';
import { sayVerdict, stepOf } from '../../../src/lib/engine/marking/say.ts';
import { shown } from './in-words.ts';
import { shelfTask } from './shelf.ts';
import { verdictsOn } from './typed-answers.ts';

type Typed = Readonly<Record<string, string>>;

function marked(typed: Typed): Record<string, string> {
	const verdicts = verdictsOn(shelfTask, typed);
	return Object.fromEntries(Object.entries(verdicts).map(([key, one]) => [key, shown(one)]));
}

describe('one entry', () => {
	test.each([
		// Right, and its edges.
		['least', '.375', 'right'],
		['least', '3/8', 'right'],
		// One slip: as computed, to the places of a shop, rounded on the way, read off a rule.
		['run', '9.9', 'slip oneMargin'],
		['run', '10.3', 'slip noMargin'],
		['count', '5', 'either down / spacesForHoles'],
		['pitch', '1.5833', 'either more / byHoles'],
		['pitch', '1.583', 'either more / byHoles'],
		['pitch', '1.58', 'either more / byHoles'],
		['grip', '1/16', 'slip oneLayer'],
		// Carried in thousandths on the way, 1.583; and as near to it, but not so.
		['pitch', '1.5830', 'either more / byHoles'],
		['pitch', '1.5836', 'unknown'],
		// Two slips lead to four holes, as two lead to many a count.
		['count', '4', 'unknown'],
		// Near a slip, but not it.
		['pitch', '1.5839', 'unknown'],
		['run', '9.92', 'unknown'],
		// A common slip before one that is seldom made.
		['least', '.5625', 'slip three'],
		// With two layers, one left out is one layer only.
		['grip', '.063', 'slip oneLayer'],
		// Several slips lead to four spaces' pitch, but only one to four spaces.
		['spaces', '4', 'slip down'],
		['spaces', '6', 'slip more'],
		['count', '7', 'slip more'],
		['pitch', '2.375', 'slip down'],
		// Two slips, exactly.
		['pitch', '2.475', 'slip oneMargin+down'],
		['pitch', '2.4757', 'unknown'],
		// A slip typed in millimetres without the unit.
		['run', '251.46', 'slip oneMargin+mm-for-inch'],
		['run', '241.3', 'unit mm-for-inch'],
		['least', '375', 'unit thousandths'],
		['least', '6', 'either unit sixteenths / step count'],
		['least', '3.75', 'digits point'],
		['least', '.0375', 'digits point'],
		['grip', '.131', 'digits swapped'],
		// Rounded: to tenths, hundredths, a rule, millimetres; cut off; on the way.
		['least', '.4', 'rounding end'],
		['least', '.38', 'rounding end'],
		['grip', '7/64', 'rounding end 64'],
		['grip', '1/8', 'rounding end 32'],
		['grip', '.125', 'rounding end 32'],
		['grip', '.11', 'rounding end'],
		['least', '.37', 'rounding cut'],
		['grip', '3 mm', 'rounding metric'],
		// The result of another step, or the factor of the rule.
		['least', '.113', 'step grip'],
		['least', '2', 'factor 2 D'],
		['least', '2D', 'factor 2 D'],
		['least', '3 D', 'slip three'],
		['least', '2.5 D', 'unknown'],
		['pitch', '5', 'step spaces'],
		// Lists.
		['positions', '.4, 2.3, 4.2, 6.1, 8, 9.9', 'right'],
		['positions', '0, 1.9, 3.8, 5.7, 7.6, 9.5', 'slip fromZero'],
		// A nought among them is near nought.
		['positions', '0, 1.905, 3.8, 5.7, 7.6, 9.5', 'slip fromZero'],
		['positions', '.4, 2.775, 5.15, 7.525, 9.9', 'slip down'],
		// The first values, all right, are half a list, whatever slip may lead to so few.
		['positions', '.4, 2.3, 4.2', 'unread'],
		['positions', '.4, 2.3, 4.2, 6.1, 8', 'unread'],
		['positions', '.4, 2.3, 4.2, 6.1, 8, 9.9, 11', 'unread'],
		['positions', '10.16, 58.42, 106.68, 154.94, 203.2, 251.46', 'unit mm-for-inch'],
		['positions', '.4, 2.3, 4.2, 6.1, 8, 9.5', 'unknown'],
		// Words.
		['name', 'ms20470ad4-5', 'right'],
		['name', 'MS20470D4-5', 'slip letters'],
		['name', 'AD4-5', 'unread'],
		['name', '470AD4-5', 'unread'],
		['name', '4-5', 'unread'],
		['name', 'bolt', 'unknown']
	])('%s %s: %s', (key, text, cause) => {
		expect(marked({ [key]: text })).toEqual({ [key]: cause });
	});

	test('of another size than the task has is asked for', () => {
		expect(verdictsOn(shelfTask, { least: '2T' }).least).toEqual({
			kind: 'unread',
			says: 'Write the size itself, worked out.'
		});
	});
});

describe('the whole sheet', () => {
	test.each<[Typed, Typed]>([
		// The pitch tells that the spaces were right.
		[
			{ count: '5', pitch: '1.9' },
			{ count: 'slip spacesForHoles', pitch: 'right' }
		],
		// One slip explains both: cheaper than two.
		[
			{ count: '5', pitch: '2.375' },
			{ count: 'slip down', pitch: 'slip down' }
		],
		// A right value before leaves only what came after it.
		[
			{ run: '9.5', pitch: '2.375' },
			{ run: 'right', pitch: 'slip down' }
		],
		// What follows from a wrong value is carried; what does not has a cause of its own.
		[
			{ run: '9.9', pitch: '1.98' },
			{ run: 'slip oneMargin', pitch: 'carried' }
		],
		[
			{ run: '9.9', pitch: '1.65' },
			{ run: 'slip oneMargin', pitch: 'either more / byHoles' }
		],
		[
			{ run: '9.9', spaces: '5', pitch: '1.65' },
			{ run: 'slip oneMargin', spaces: 'right', pitch: 'slip byHoles' }
		],
		// Whoever had one run did not have another.
		[
			{ run: '9.9', pitch: '2.06' },
			{ run: 'slip oneMargin', pitch: 'unknown' }
		],
		// The same, with something right that has no part in it.
		[
			{ least: '.375', run: '9.9', pitch: '2.06' },
			{ least: 'right', run: 'slip oneMargin', pitch: 'unknown' }
		],
		// A wrong pitch, carried in thousandths along the holes.
		[
			{ spaces: '6', positions: '.4, 1.983, 3.566, 5.149, 6.732, 8.315, 9.898' },
			{ spaces: 'slip more', positions: 'carried' }
		],
		// The same along the pitch as it is.
		[
			{ spaces: '6', positions: '.4, 1.9833, 3.5667, 5.15, 6.7333, 8.3167, 9.9' },
			{ spaces: 'slip more', positions: 'carried' }
		],
		// Nothing follows from no spaces.
		[
			{ spaces: '0', pitch: '2.22' },
			{ spaces: 'unknown', pitch: 'unknown' }
		],
		// Two fields exchanged.
		[
			{ least: '.113', grip: '.375' },
			{ least: 'step grip', grip: 'step least' }
		],
		// A part of a list speaks for nothing else.
		[
			{ pitch: '2.375', positions: '.4, 2.3' },
			{ pitch: 'slip down', positions: 'unread' }
		],
		[
			{ least: '2D', run: '9.9' },
			{ least: 'factor 2 D', run: 'slip oneMargin' }
		],
		// Whoever writes one length in sixteenths writes the other in them too: 6 was not the holes.
		[
			{ least: '6', run: '152' },
			{ least: 'unit sixteenths', run: 'unit sixteenths' }
		],
		// A right count after it leaves the slip in the step between.
		[
			{ pitch: '1.5833', count: '6' },
			{ count: 'right', pitch: 'slip byHoles' }
		]
	])('%j: %j', (typed, causes) => {
		expect(marked(typed)).toEqual(causes);
	});
});

describe('what is said', () => {
	const said = (typed: Typed, key: string) => {
		const verdict = verdictsOn(shelfTask, typed)[key];
		if (!verdict) throw new Error(`not marked: ${key}`);
		return sayVerdict(shelfTask, verdict, key);
	};

	test.each<[Typed, string, string]>([
		[{ least: '.375' }, 'least', 'Right.'],
		[{ run: '9.9', pitch: '1.98' }, 'pitch', 'Correct from your earlier number.'],
		[{ run: '9.9' }, 'run', 'One margin only.'],
		[{ pitch: '2.475' }, 'pitch', 'One margin only. And: Rounded down.'],
		[
			{ run: '251.46' },
			'run',
			'One margin only. And: That is the right size in millimetres, read as inches.'
		],
		[{ pitch: '1.5833' }, 'pitch', 'One of two: One space too many. Or: Divided by the holes.'],
		[{ least: '.113' }, 'least', 'That is “Grip”, not “Least edge”.'],
		[{ least: '2' }, 'least', '2D is the rule; multiply by D.'],
		[{ least: '375' }, 'least', 'That is the right size in thousandths; write it as inches.'],
		[
			{ grip: '1/8' },
			'grip',
			'Rounded to the nearest 1/32 in, which is too coarse here: give it finer.'
		],
		[{ least: '3.75' }, 'least', 'The digits are right; the decimal point is not.'],
		[{ grip: '.131' }, 'grip', 'Two digits have changed places.'],
		[{ positions: '.4, 2.3, 4.2' }, 'positions', '3 of 6: write all of them.'],
		[
			{ positions: '.4, 2.3, 4.2, 6.1, 8, 9.9, 11' },
			'positions',
			'7 values are here; 6 are wanted.'
		],
		[{ name: 'AD4-5' }, 'name', 'Write the whole number, from MS or AN on.'],
		[
			{ least: '.7' },
			'least',
			'This number does not tell what went wrong; work this step once more.'
		]
	])('%j, %s: %s', (typed, key, sentence) => {
		expect(said(typed, key)).toBe(sentence);
	});

	test.each<[Typed, string, string | null]>([
		[{ pitch: '2.375' }, 'pitch', 'spaces'],
		[{ least: '375' }, 'least', 'least'],
		[{ least: '2' }, 'least', 'least'],
		[{ least: '.113' }, 'least', 'least'],
		[{ pitch: '1.5833' }, 'pitch', null],
		[{ least: '.7' }, 'least', null]
	])('%j, %s lies in %s', (typed, key, step) => {
		const verdict = verdictsOn(shelfTask, typed)[key];
		const cause = verdict?.kind === 'rework' ? verdict.cause : { kind: 'unknown' as const };
		expect(stepOf(shelfTask, cause, key)).toBe(step);
	});
});
