import { expect, test } from 'vitest';
import { loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { toldOf } from '../wrong-answers/told.ts';
import { taskOf } from './typed-answers.ts';

/*
 * What is told about answers in company: of the corpus of wrong answers, those that hold what
 * nothing else here does. Above each, what was done.
 */
interface Row {
	readonly code: string;
	readonly id: string;
	readonly given: Values;
	readonly asked: readonly string[];
	readonly typed: Readonly<Record<string, string>>;
	readonly told: Readonly<Record<string, string>>;
}

const rows: readonly Row[] = [
	// Both factors typed for the sizes.
	{
		code: 'ED',
		id: 'edge-distance',
		given: { D: 0.25, head: 'countersunk' },
		asked: ['least', 'greatest'],
		typed: { least: '2.5', greatest: '4' },
		told: { least: 'factor', greatest: 'factor' }
	},
	// The diameter of the bar.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T4', T: 0.016 },
		asked: ['radius', 'bar'],
		typed: { bar: '1/8' },
		told: { bar: 'upToEighth or barDiameter' }
	},
	// K to one decimal.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.25, T: 0.063, angle: 120 },
		asked: ['setback'],
		typed: { setback: '.5321' },
		told: { setback: 'rounding:way' }
	},
	// Least and most changed places, judged right.
	{
		code: 'SC',
		id: 'shop-head-check',
		given: { D: 0.1875, width: 0.249, height: 0.137 },
		asked: ['leastWidth', 'mostWidth', 'judgement'],
		typed: { leastWidth: '.3112', mostWidth: '.2344', judgement: 'drive more' },
		told: {
			leastWidth: 'other-step:mostWidth',
			mostWidth: 'other-step:leastWidth',
			judgement: 'right'
		}
	},
	// Two mistakes: between the legs, and R alone.
	{
		code: 'BL',
		id: 'setback-from-legs',
		given: { R: 0.09375, T: 0.05, betweenLegs: 70 },
		asked: ['setback'],
		typed: { setback: '.0656' },
		told: { setback: 'legs+noT' }
	},
	// Two mistakes: R for the setback, no sheet in the allowance.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.09375, T: 0.02, legs: [1, 2.25], angles: [90] },
		asked: ['width'],
		typed: { width: '3.2096' },
		told: { width: 'allowNoT+noT or allowNoT+radiusAlone' }
	},
	// The hundredths read as 64ths.
	{
		code: 'BR',
		id: 'least-bend-radius',
		given: { alloy: '6061-T4', T: 0.016 },
		asked: ['radius', 'bar'],
		typed: { radius: '3/64' },
		told: { radius: 'in64ths' }
	},
	// The radius as it stands.
	{
		code: 'BS',
		id: 'setback',
		given: { R: 0.0625, T: 0.05, angle: 90 },
		asked: ['setback'],
		typed: { setback: '1/16' },
		told: { setback: 'noT' }
	},
	// The leg as it is: the mold line.
	{
		code: 'BG',
		id: 'sight-line',
		given: { leg: 1.25, R: 0.25, T: 0.063, angle: 90 },
		asked: ['sightLine'],
		typed: { sightLine: '1 1/4' },
		told: { sightLine: 'noT or moldLine' }
	},
	// K left out of the setback.
	{
		code: 'BE',
		id: 'sight-line-leg',
		given: { R: 0.125, T: 0.063, angle: 60, tangentLine: 2.32 },
		asked: ['setback', 'leg'],
		typed: { leg: '2.508' },
		told: { leg: 'square' }
	},
	// Two setbacks from every leg, also at the ends.
	{
		code: 'BW',
		id: 'developed-width',
		given: { R: 0.15625, T: 0.025, legs: [1.1875, 2.25], angles: [120] },
		asked: ['flats', 'allowances', 'width'],
		typed: { flats: '.5596, 1.6221' },
		told: { flats: 'doubled or twice' }
	},
	// Count right, then the greatest pitch.
	{
		code: 'LR',
		id: 'rivet-row',
		given: { length: 5.875, endMargin: 0.28125, greatestPitch: 0.375 },
		asked: ['count', 'pitch'],
		typed: { count: '16', pitch: '.375' },
		told: { count: 'right', pitch: 'pitchNotDivided or pitchToSixteenths or rounding:end' }
	},
	// Stops at 3T and types that.
	{
		code: 'RT',
		id: 'rivet-diameter',
		given: { thickest: 0.051 },
		asked: ['threeT', 'diameter'],
		typed: { diameter: '.153' },
		told: { diameter: 'notStocked' }
	}
];

const methods = new Map((await loadMethods()).map((method) => [method.id, method]));

test.each(rows)('$id, $typed: $told', async ({ code, id, given, asked, typed, told }) => {
	const method = methods.get(id);
	if (!method) throw new Error(`no method: ${id}`);
	const all = await toldOf(await taskOf(code, method, given, asked), typed);
	const words = [...(all ?? [])].map(([key, one]) => {
		const causes = one.kind === 'offered' ? one.causes : one.kind === 'named' ? [one.cause] : [];
		return [key, causes.map(([name]) => name).join(' or ') || one.kind];
	});
	expect(Object.fromEntries(words)).toEqual(told);
});
