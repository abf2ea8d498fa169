import { describe, expect, test } from 'vitest';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { toldOf } from '../wrong-answers/told.ts';

await loadReader();

/*
 * What people who tried the program were told, and what they should have been: a case for each
 * cause that was put right. The numbers are those of the families' present revisions.
 */
describe('told at the bench', () => {
	test.each([
		// The first values of a list, all right.
		['LR3-9JTW-2S', 'positions', '.2344, .8438, 1.4531, 2.0625, 2.6719, 3.2813', 'unread'],
		['BW3-9JTW-2K', 'flats', '.1408', 'unread'],
		// Four digits that a slip leads to, before rounding on the way.
		['CW1-3NR8-2B', 'weight', '55.30', 'densityOf2024'],
		['CW3-9JTW-2V', 'weight', '12.18', 'densityOf2024'],
		// Two steps with equal values are one.
		['CB1-369A-2F', 'blankLength', '2', 'other-step:addedLength'],
		// A slip in the step itself beside the result of another.
		['ED2-8SWS-2P', 'least', '1/8', 'oneDiameter or other-step:diameter'],
		['LF3-AHRR-2Q', 'edge', '3/8', 'dashIn16ths'],
		// What stands on the paper as a size is no factor.
		['LF1-5452-2B', 'rowsApart', '3/4', 'fullPitch'],
		// A number that a slip leads to, and rounding as well.
		['LF1-4576-2W', 'rowsApart', '1', 'greatestEdge or rounding:end'],
		['BW3-B17P-2Q', 'width', '3 3/16', 'sum or rounding:end'],
		['BS3-B17P-2C', 'setback', '.08', 'rowAfter or rounding:end'],
		['BS3-B17P-2C', 'setback', '1/8', 'radiusAlone'],
		// Half-way between two lines of a rule, before a slip that only comes near.
		['SH2-6CJ3-2R', 'width', '5/16', 'rounding:end'],
		['SH1-4MP4-2H', 'width', '5/32', 'rounding:end'],
		// Digits: a seldom slip fits as well; over the point; in a part number; a slip before a point.
		['BL3-BGPM-2S', 'angle', '311', 'from360 or digits:swapped'],
		['HD1-5KM0-27', 'size', '.125', 'digits:swapped or rounding:end'],
		['RB1-3NR8-2X', 'perInch', '5.4', 'digits:swapped'],
		['RN2-6CJ3-27', 'number', 'MS20462DD5-12', 'digits:swapped'],
		['BG1-4MP4-2S', 'sightLine', '.016', 'setbackLessR'],
		// A slip that leads nowhere further on.
		['BR1-4MP4-2G', 'radius', '19/64', 'in64ths'],
		['HP2-7BFZ-22', 'pilot', '3/16', 'lastForPilot'],
		// Nothing is the same in every unit.
		['HP3-AHRR-2M', 'clearance', '0', 'nominal or drillUnder']
	])('%s %s %s: %s', async (number, key, text, told) => {
		const all = await toldOf(await taskFromNumber(number), { [key]: text });
		const one = all?.get(key);
		const causes = one?.kind === 'offered' ? one.causes : one?.kind === 'named' ? [one.cause] : [];
		expect(causes.map(([name]) => name).join(' or ') || one?.kind).toBe(told);
	});
});
