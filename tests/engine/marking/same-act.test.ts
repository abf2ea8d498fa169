import { describe, expect, test } from 'vitest';
import { cardByCode, loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { isActOf, isSameAct } from '../../../src/lib/engine/marking/same-act.ts';
import type { Cause } from '../../../src/lib/engine/marking/verdict.ts';
import { panelRows, panelTwoStacks } from '../../../src/lib/engine/families/panel/parts/joined.ts';
import { drillForRivet } from '../../../src/lib/engine/methods/drill-for-rivet.ts';
import { piecesPerSheet } from '../../../src/lib/engine/methods/pieces-per-sheet.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { shelfTask } from './shelf.ts';
import { stripTask } from './strip.ts';
import { causeIn, taskOf } from './typed-answers.ts';

const from = (step: string): Cause => ({ kind: 'other-step', step });
const nearest = (parts?: number): Cause => ({
	kind: 'rounding',
	how: 'end',
	...(parts && { parts })
});

/** 24 spaces of 0.3646 in, which is 3/8 in to the nearest sixteenth, as far as the gap may be. */
const row = await taskOf('LR', rivetRow, {
	length: 9.3125,
	endMargin: 0.28125,
	greatestPitch: 0.375
});

describe('two slips in one step', () => {
	test('are one act where they come to the same with other numbers too', () => {
		// Both layers are alike.
		expect(isSameAct(stripTask, 'oneLeftOut', 'largestAlone')).toBe(true);
		expect(isSameAct(stripTask, 'oneLeftOut', 'byWidth')).toBe(false);
	});

	test('are one act in whole numbers where a nought makes them so', async () => {
		const sheet = { sheetLength: 144, sheetWidth: 48, pieceLength: 8, pieceWidth: 3.25 };
		const blanks = (kerf: number) => taskOf('CS', piecesPerSheet, { ...sheet, kerf });
		expect(isSameAct(await blanks(0), 'area', 'roundedLast')).toBe(true);
		expect(isSameAct(await blanks(0), 'area', 'turned')).toBe(false);
		expect(isSameAct(await blanks(0.0625), 'area', 'roundedLast')).toBe(false);
	});

	test('are two acts in whole numbers and in other steps', () => {
		expect(isSameAct(stripTask, 'down', 'lessOne')).toBe(false);
		expect(isSameAct(shelfTask, 'down', 'spacesForHoles')).toBe(false);
	});
});

describe('a slip and a fault of writing', () => {
	test('are one act where the slip gives the result of that step, whatever it is', () => {
		expect(isActOf(shelfTask, 'count', 'spacesForHoles', from('spaces'))).toBe(true);
		expect(isActOf(shelfTask, 'count', 'spacesForHoles', from('run'))).toBe(false);
		expect(isActOf(shelfTask, 'pitch', 'byHoles', from('run'))).toBe(false);
		expect(isActOf(shelfTask, 'pitch', 'noMargin', from('gap'))).toBe(false);
	});

	test('are one act where the slip is that rounding', () => {
		expect(isActOf(row, 'pitch', 'pitchToSixteenths', nearest(16))).toBe(true);
		expect(isActOf(row, 'pitch', 'pitchToSixteenths', nearest(32))).toBe(true);
		expect(isActOf(row, 'pitch', 'pitchToSixteenths', nearest(8))).toBe(false);
		expect(isActOf(row, 'pitch', 'pitchToSixteenths', nearest())).toBe(false);
		expect(isActOf(row, 'pitch', 'pitchToSixteenths', { kind: 'unit', unit: 'mm' })).toBe(false);
		expect(isActOf(row, 'pitch', 'pitchNotDivided', nearest(16))).toBe(false);
		expect(causeIn(row, { pitch: '3/8' }, 'pitch')).toEqual({
			kind: 'either',
			slips: ['pitchNotDivided', 'pitchToSixteenths']
		});
	});

	test('are one act where the size comes from a rivet number, and another rivet shows it', async () => {
		const card = cardByCode('HP');
		if (!card) throw new Error('no drills for rivets');
		const family = await loadFamily(card);
		const tasks = Array.from({ length: 20 }, (_, seed) => drawTask(family, 2, seed));
		const task = tasks.find(({ drawn }) => typeof drawn.given['number'] === 'string');
		if (!task) throw new Error('none by its number');
		expect(isActOf(task, 'final', 'nominal', from('pilot'))).toBe(true);
		expect(isActOf(task, 'final', 'rowAbove', from('pilot'))).toBe(false);
		// A hole of twice the size is a size too wide, and the pilot drill has the rivet's size.
		expect(isActOf(task, 'clearance', 'twiceForFinal', from('pilot'))).toBe(true);
	});

	test('are one act where another stocked size shows it', async () => {
		const drills = await taskOf('HP', drillForRivet, { D: 0.125 });
		expect(isActOf(drills, 'clearance', 'twiceForFinal', from('pilot'))).toBe(true);
		const panel = await taskOf('PN', panelRows, {
			layers: [0.025, 0.04],
			head: 'protruding',
			rowLength: 15.5,
			greatestPitch: 0.75,
			rows: 3
		});
		// One diameter for the edge is the size of the pilot drill; two come to it for no rivet.
		expect(isActOf(panel, 'least', 'oneDiameter', from('pilot'))).toBe(true);
		expect(isActOf(panel, 'least', 'oneDiameter', from('final'))).toBe(false);
	});

	test('are two acts where the result is that of the other stack', async () => {
		// Stack B is A without its outer layer: 1/4 in for B. One layer alone at A comes to 1/4 in as well.
		const panel = await taskOf('PN', panelTwoStacks, {
			layers: [0.04, 0.025, 0.02],
			layersB: [0.025, 0.02],
			head: 'protruding',
			rowLength: 12.5,
			greatestPitch: 0.875,
			rows: 2
		});
		expect(isActOf(panel, 'length', 'grip.oneLayer', from('lengthB'))).toBe(false);
		expect(isActOf(panel, 'length', 'diameter.down', from('lengthB'))).toBe(false);
	});

	test('are two acts where only these numbers make them one', async () => {
		// Turned a quarter, eight go along the sheet and one across: eight blanks as well.
		const [sheetLength, sheetWidth, pieceLength, pieceWidth] = [48, 24, 14.75, 6];
		const sheet = { sheetLength, sheetWidth, pieceLength, pieceWidth, kerf: 0 };
		const blanks = await taskOf('CS', piecesPerSheet, sheet);
		expect(isActOf(blanks, 'lengthwise', 'turned', from('turnedAlong'))).toBe(false);
		expect(isActOf(blanks, 'lengthwise', 'turned', from('crosswise'))).toBe(true);
		// What goes across is that, whatever the sheet.
		expect(isActOf(blanks, 'alongLength', 'widthsAcrossForAlong', from('acrossWidth'))).toBe(true);
	});
});
