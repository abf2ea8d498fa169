import { describe, expect, test } from 'vitest';
import { sayCause } from '../../../src/lib/engine/marking/say.ts';
import { blankSize } from '../../../src/lib/engine/methods/blank-size.ts';
import { bendAllowance } from '../../../src/lib/engine/methods/bend-allowance.ts';
import { lapWidth } from '../../../src/lib/engine/methods/lap-width.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { shopHeadCheck } from '../../../src/lib/engine/methods/shop-head-check.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { causeIn, taskOf } from './typed-answers.ts';

/* Grip 0.083, 1.5D 0.1875: 0.2705 in needed. */
const rivet = await taskOf('RL', rivetLength, { layers: [0.032, 0.051], D: 0.125 }, [
	'needed',
	'length'
]);

const misread = (given: string, how: string) => ({ kind: 'misread', given, how });

describe('a number of the task that was misread', () => {
	test.each([
		['the next larger rivet', '.3174', misread('D', 'larger')],
		['the next larger sheet', '.2785', misread('layers', 'larger')],
		['two digits exchanged', '.2615', misread('layers', 'swapped')],
		['the point misplaced', '.5585', misread('layers', 'point')],
		['the point misplaced to the left', '.2417', misread('layers', 'point')],
		['the next smaller rivet', '.2236', misread('D', 'smaller')],
		['the next smaller sheet', '.2635', misread('layers', 'smaller')]
	])('%s is told, and the size worked on with', (_, needed, cause) => {
		expect(causeIn(rivet, { needed }, 'needed')).toEqual(cause);
	});

	test('0.040 read as 0.4 is a misplaced point, and no exchange of digits', async () => {
		const thin = await taskOf('RL', rivetLength, { layers: [0.04, 0.051], D: 0.125 }, ['needed']);
		expect(causeIn(thin, { needed: '.6385' }, 'needed')).toEqual(misread('layers', 'point'));
	});

	test.each([
		['a thickness of no gauge, for which the thinnest was put', [0.0449, 0.051], 0.125, '.2545'],
		['two sizes of rivet on', [0.032, 0.051], 5 / 32, '.4111']
	])('%s is not told', async (_, layers, D, needed) => {
		const other = await taskOf('RL', rivetLength, { layers, D }, ['needed']);
		expect(causeIn(other, { needed }, 'needed')).not.toMatchObject({ kind: 'misread' });
	});

	test('is told of what was worked on with, too, though one entry alone may have another cause', async () => {
		const head = await taskOf('SC', shopHeadCheck, { D: 3 / 32, width: 0.124, height: 0.069 });
		const typed = { leastWidth: '.156', mostWidth: '.2075', leastHeight: '.041' };
		for (const key of Object.keys(typed)) {
			expect(causeIn(head, typed, key)).toEqual(misread('D', 'larger'));
		}
		expect(causeIn(head, { leastWidth: '.156' }, 'leastWidth')).toEqual({
			kind: 'slip',
			slips: ['mostForLeast']
		});
	});

	test('is told in a sentence, with one of several', () => {
		expect(sayCause(rivet, { kind: 'misread', given: 'D', how: 'larger' }, 'needed')).toBe(
			'You get this with “Rivet diameter” one size too large: read the task again.'
		);
		expect(sayCause(rivet, { kind: 'misread', given: 'layers', how: 'point' }, 'needed')).toMatch(
			/^You get this with the decimal point of one of “.+” in the wrong place: read the task again\.$/
		);
	});

	test('is not told of a stocked size, which is come to in many ways', () => {
		expect(causeIn(rivet, { length: '3/4' }, 'length')).not.toMatchObject({ kind: 'misread' });
	});

	test('is not told where a right entry speaks against it', () => {
		expect(causeIn(rivet, { needed: '.3174', length: '5/16' }, 'needed')).not.toMatchObject({
			kind: 'misread'
		});
	});
});

describe('a fraction of the task that was misread', async () => {
	/* The radius of 1/16 in counts 0.0980 in a bend of 90°. */
	const bend = await taskOf('BA', bendAllowance, { R: 1 / 16, T: 0.02, angle: 90 });
	test.each([
		['keyed in by its denominator', '.2510', 'keyed'],
		['with the next odd numerator', '.2941', 'fraction']
	])('%s is told', (_, forRadius, how) => {
		expect(causeIn(bend, { forRadius }, 'forRadius')).toEqual(misread('R', how));
	});

	test.each([
		['the one before', '.0980'],
		['the next one', '.4902']
	])('%s is told of 3/16', async (_, forRadius) => {
		const wide = await taskOf('BA', bendAllowance, { R: 3 / 16, T: 0.02, angle: 90 });
		expect(causeIn(wide, { forRadius }, 'forRadius')).toEqual(misread('R', 'fraction'));
	});

	test('keeps its whole inches', async () => {
		const drum = await taskOf('BA', bendAllowance, { R: 1 + 3 / 16, T: 0.02, angle: 90 });
		expect(causeIn(drum, { forRadius: '1.6667' }, 'forRadius')).toEqual(misread('R', 'fraction'));
	});

	test.each([
		['a numerator under nought', 1 + 1 / 16, '1.4724'],
		['a whole inch', 15 / 16, '1.6667'],
		['a fraction that is no misreading of 1/8', 1 / 8, '.1255'],
		['the denominator of 3/16', 3 / 16, '.2510']
	])('%s is not told', async (_, R, forRadius) => {
		const other = await taskOf('BA', bendAllowance, { R, T: 0.02, angle: 90 });
		expect(causeIn(other, { forRadius }, 'forRadius')).not.toMatchObject({
			kind: 'misread'
		});
	});
});

describe('other numbers misread', () => {
	test.each([
		['half', '1.172'],
		['twice as much', '.8555']
	])('a denominator read as %s is told', async (_, rowsApart) => {
		const lap = await taskOf(
			'LF',
			lapWidth,
			{ D: 5 / 32, head: 'protruding', rows: 2, pitch: 1 + 9 / 32 },
			['rowsApart']
		);
		expect(causeIn(lap, { rowsApart }, 'rowsApart')).toEqual(misread('pitch', 'fraction'));
	});

	test('noughts at the end are digits too', async () => {
		const spar = await taskOf('RL', rivetLength, { layers: [0.19, 0.051], D: 0.25 }, ['needed']);
		expect(causeIn(spar, { needed: '.535' }, 'needed')).toEqual(misread('layers', 'swapped'));
	});

	test('a count is read as it stands', async () => {
		const blank = await taskOf(
			'CB',
			blankSize,
			{
				finishedLength: 6.5,
				finishedWidth: 3,
				endTrim: 0.25,
				edgeTrim: 0.25,
				trimmedEnds: 2,
				trimmedEdges: 2
			},
			['blankLength']
		);
		expect(causeIn(blank, { blankLength: '6.55' }, 'blankLength')).not.toMatchObject({
			kind: 'misread'
		});
	});
});

test('a length copied is told as the slip that takes it, though the count came out right', async () => {
	const row = await taskOf(
		'LR',
		rivetRow,
		{ length: 8.25, endMargin: 0.375, greatestPitch: 0.375 },
		['run', 'count']
	);
	expect(causeIn(row, { run: '8 1/4', count: `${Number(row.right.count)}` }, 'run')).toEqual({
		kind: 'slip',
		slips: ['noMargin']
	});
});
