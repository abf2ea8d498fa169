import { describe, expect, test } from 'vitest';
import { planPanel } from '../../../src/lib/engine/panel/plan.ts';
import { planData } from '../../../src/lib/engine/panel/report.ts';
import { reliefDiameter } from '../../../src/lib/engine/trade/relief-holes.ts';

/*
 * Panels worked by hand from the published rules: 3T up to the next 1/32 (FAA-H-8083-31B, pp. 4-32,
 * 4-33), 1.5D past the grip up to the next 1/16 (Fig. 4-76), end margin 2D + 1/16 (Fig. 4-79), rows
 * divided evenly between fixed holes, two rows 75 percent of the pitch apart (Fig. 4-81), density of
 * 2024 0.1 lb/in³. The sums stand beside each.
 */

const skin = { length: '10in', width: '8in', thickness: '0.032in', alloy: '2024-T3' };
const universal = { head: 'universal' };

async function planned(file: object) {
	return planData(await planPanel({ rivet: universal, greatestPitch: '1in', ...file }));
}

type Planned = Awaited<ReturnType<typeof planned>>;

/** Places along a row, to a thousandth. */
function along({ holes }: Planned, row: string, axis: 'x' | 'y'): number[] {
	return holes
		.filter((hole) => hole.row === row || hole.crosses === row)
		.map((hole) => hole[axis])
		.sort((a, b) => a - b)
		.map(thousandth);
}

const thousandth = (value: number) => Math.round(value * 1000) / 1000;
const steps = (from: number, pitch: number, spaces: number) =>
	Array.from({ length: spaces + 1 }, (_, i) => thousandth(from + i * pitch));

describe('a panel worked by hand', () => {
	test('a frame that does not divide evenly', async () => {
		const plan = await planned({
			panel: skin,
			members: [{ name: 'frame', runs: 'across', at: '3in', flange: '3/4in', thickness: '0.040in' }]
		});
		// D: 3 × 0.040 = 0.120, up to 1/8. Margin: 2 × 1/8 + 1/16 = 5/16.
		// Run 8 − 2 × 5/16 = 7 3/8; over 1 in pitch 7.375, up to 8 spaces of 0.921875; 9 rivets.
		expect(along(plan, 'frame', 'y')).toEqual(steps(0.3125, 0.921875, 8));
		// 0.032 + 0.040 + 1.5 × 0.125 = 0.2595, up to 5/16; one spare for ten.
		expect(plan.rivets).toEqual([{ number: 'MS20470AD4-5', count: 9, spares: 1 }]);
		// 10 × 8 × 0.032 × 0.1
		expect(plan.weight).toBe(0.256);
		expect(plan.holes[0]).toMatchObject({ x: 3, row: 'frame', layers: [0.032, 0.04] });
		expect(plan.problems).toEqual([]);
	});

	test('staggered rows', async () => {
		const plan = await planned({
			panel: { ...skin, width: '6in', thickness: '0.025in' },
			members: [
				{ name: 'frame', runs: 'across', at: 4, flange: '1 1/4in', thickness: '0.025in', rows: 2 }
			]
		});
		// D: 3 × 0.025 = 0.075, up to 3/32. Margin 2 × 3/32 + 1/16 = 1/4. Rows 0.75 × 1 in apart, over
		// 2.5D = 0.234; two edges of 3/16 and 0.75 are 1.125, inside 1 1/4.
		// Run 6 − 1/2 = 5.5, 6 spaces of 0.916667: 7 holes, and 6 midway, 0.458333 farther on.
		expect(along(plan, 'frame', 'y')).toEqual(steps(0.25, 5.5 / 6, 6));
		expect(along(plan, 'frame, row 2', 'y')).toEqual(steps(0.25 + 5.5 / 12, 5.5 / 6, 5));
		// The full row stands towards the nearer edge: 4 − 0.375 and 4 + 0.375.
		expect(new Set(along(plan, 'frame', 'x'))).toEqual(new Set([3.625]));
		expect(new Set(along(plan, 'frame, row 2', 'x'))).toEqual(new Set([4.375]));
		// 0.050 + 1.5 × 0.09375 = 0.1906, up to 1/4.
		expect(plan.rivets).toEqual([{ number: 'MS20470AD3-4', count: 13, spares: 2 }]);
		// From row to row: √(0.75² + 0.458333²) = 0.8790; at least 4D = 0.375 in each row.
		expect(plan.limits).toContainEqual(
			expect.objectContaining({ row: 'frame', what: 'pitch', least: true, limit: 0.375 })
		);
		expect(plan.problems).toEqual([]);
	});

	test('staggered rows over a stringer share its holes', async () => {
		const thin = '0.025in';
		const plan = await planned({
			panel: { ...skin, width: '6in', thickness: thin },
			members: [
				{ name: 'frame', runs: 'across', at: 4, flange: '1 1/4in', thickness: thin, rows: 2 },
				{ name: 'stringer', runs: 'along', at: 3, flange: '5/8in', thickness: thin }
			]
		});
		// Rows of the frame at 3.625 and 4.375, as above; 0.75 apart is over 3D, so both have a hole on
		// the line of the stringer, at 3. First row: 2.75 to either side, 3 spaces of 0.916667.
		expect(along(plan, 'frame', 'y')).toEqual(steps(0.25, 2.75 / 3, 6));
		// Second row: from 0.708333, midway between the first two, 2.291667 to 3 in 3 spaces.
		const half = 2.75 / 6;
		expect(along(plan, 'frame, row 2', 'y')).toEqual(steps(0.25 + half, (2.75 - half) / 3, 6));
		// Stringer: 3.375 in 4 spaces, 0.75 in one, 5.375 in 6.
		expect(along(plan, 'stringer', 'x')).toEqual([
			...steps(0.25, 3.375 / 4, 4),
			...steps(4.375, 5.375 / 6, 6)
		]);
		expect(plan.holes.filter(({ crosses }) => crosses).map(({ x, y }) => [x, y])).toEqual([
			[3.625, 3],
			[4.375, 3]
		]);
		expect(plan.problems).toEqual([]);
	});

	test('two stacks in one row', async () => {
		const plan = await planned({
			panel: { ...skin, width: '6in', thickness: '0.025in' },
			members: [{ name: 'frame', runs: 'across', at: 4, flange: 1, thickness: '0.032in' }],
			doublers: [{ name: 'doubler', x: 3, y: 0, length: 2, width: 3.4375, thickness: '0.050in' }]
		});
		// D: 3 × 0.050 = 0.150, up to 5/32, for the whole row; without the doubler 0.096 asks for 1/8.
		// Margin 2 × 5/32 + 1/16 = 3/8; run 5 1/4, 6 spaces of 7/8.
		expect(along(plan, 'frame', 'y')).toEqual([0.375, 1.25, 2.125, 3, 3.875, 4.75, 5.625]);
		// 0.107 + 0.2344 = 0.3414, up to 3/8, up to y = 3; 0.057 + 0.2344 = 0.2914, up to 5/16, above.
		expect(plan.holes.map(({ rivet }) => rivet.slice(-3))).toEqual([
			'5-6',
			'5-6',
			'5-6',
			'5-6',
			'5-5',
			'5-5',
			'5-5'
		]);
		expect(plan.notes).toEqual([
			expect.stringMatching(/the largest that one of its stacks wants: frame 5\/32 in\./)
		]);
		expect(plan.problems).toEqual([]);
	});

	test('cut-outs', async () => {
		const frame = { runs: 'across', flange: '3/4in', thickness: '0.032in' };
		const plan = await planned({
			panel: skin,
			members: [
				{ ...frame, name: 'through', at: 5 },
				{ ...frame, name: 'beside', at: 8 }
			],
			cutouts: [
				{ name: 'window', x: 4, y: 3, length: 2, width: 2 },
				{ name: 'port', x: 8.5, y: 4, diameter: 1.5 }
			]
		});
		// D 1/8, margin 5/16 also from the window, which spans 3 to 5: 0.3125 to 2.6875 and 5.3125 to
		// 7.6875, each 2.375, 3 spaces of 0.791667.
		expect(along(plan, 'through', 'y')).toEqual([
			...steps(0.3125, 2.375 / 3, 3),
			...steps(5.3125, 2.375 / 3, 3)
		]);
		// The port's rim keeps 5/16: √((0.75 + 0.3125)² − 0.5²) = 0.9375 from y = 4, so up to 3.0625 and
		// from 4.9375; each 2.75, 3 spaces of 0.916667.
		expect(along(plan, 'beside', 'y')).toEqual([
			...steps(0.3125, 2.75 / 3, 3),
			...steps(4.9375, 2.75 / 3, 3)
		]);
		// (80 − 4 − π/4 × 1.5²) × 0.032 × 0.1
		expect(plan.weight).toBeCloseTo((76 - (Math.PI / 4) * 2.25) * 0.0032, 4);
		expect(plan.problems).toEqual([]);
	});

	test('what lies past the edge is told at its field, and the rest is worked', async () => {
		const frame = { runs: 'across', flange: '3/4in', thickness: '0.032in' };
		const file = {
			panel: { ...skin, cornerRadius: '9in' },
			members: [
				{ ...frame, name: 'off', at: 50 },
				{ ...frame, name: 'odd', at: 3, thickness: '0.033in' },
				{ ...frame, name: 'drilled', at: 6, drilled: ['1in', '2in', '9in'] }
			],
			doublers: [{ name: 'plate', x: 8, y: 2, length: 3, width: 1, thickness: '0.032in' }],
			cutouts: [
				{ name: 'window', x: 9, y: 3, length: 2, width: 2 },
				{ name: 'port', x: 0.5, y: 4, diameter: 2 }
			],
			bends: [{ edge: 'left', leg: '3/4in', angle: 200, radius: '1/8in' }]
		};
		const { problems } = await planPanel({ rivet: universal, greatestPitch: '1in', ...file });
		const plan = await planned(file);
		const past = 'it reaches past the edge of the panel; correct its place or its size.';
		const told = problems.map(({ field, says }) => [field, says]);
		for (const one of [
			[
				'panel.cornerRadius',
				'Panel, corner radius: 9 in is more than half the panel; 4 in is used.'
			],
			[
				'members.1.thickness',
				'odd, thickness: 0.033 in is in no gauge table; the nearest are 0.032 in and 0.040 in.'
			],
			[
				'members.2.drilled',
				'drilled, drilled holes: 9 in is off the member, which lies between 0 in and 8 in; correct it.'
			],
			['doublers.0.x', `plate: ${past}`],
			['cutouts.0.x', `window: ${past}`],
			['cutouts.1.x', `port: ${past}`],
			[
				'bends.0.angle',
				'Bend 1, bend angle: it counts from flat and lies between 0° and 180°; correct it.'
			]
		])
			expect(told).toContainEqual(one);
		expect(along(plan, 'drilled', 'y')).toEqual([1, 2]);
		expect(plan.notes.join()).toContain('Round the corners of an opening to a radius of 1/2 in');
		expect(plan.notes.join()).not.toContain('one rivet diameter');
	});

	test('a flange that hangs over an edge of the panel is told, and one on the edge is not', async () => {
		const frame = { flange: '3/4in', thickness: '0.040in' };
		const across = { ...frame, runs: 'across' };
		const along = { ...frame, runs: 'along' };
		// Half of the flange is 3/8; the panel is 10 by 8.
		const { problems } = await planPanel({
			rivet: universal,
			greatestPitch: '1in',
			panel: skin,
			members: [
				{ ...across, name: 'A', at: '0.3in' },
				{ ...across, name: 'B', at: '3/8in' },
				{ ...across, name: 'C', at: '9 3/4in' },
				{ ...along, name: 'D', at: '1/4in' },
				{ ...along, name: 'E', at: '7 5/8in' }
			]
		});
		const over = problems.filter(({ says }) => says.includes('hangs'));
		expect(over.map(({ field, says }) => [field, says.split(' of the panel')[0]])).toEqual([
			['members.0.at', 'A: its flange hangs 0.075 in over the left edge'],
			['members.2.at', 'C: its flange hangs 1/8 in over the right edge'],
			['members.3.at', 'D: its flange hangs 1/8 in over the lower edge']
		]);
	});

	test('the pitch is held to the greatest that was entered, and to 10D where that is less', async () => {
		const member = { name: 'A', runs: 'across', at: 3, flange: '3/4in', thickness: '0.040in' };
		const limitFor = async (greatestPitch: string, drilled?: string[]) => {
			const members = [drilled ? { ...member, drilled } : member];
			const { checks } = await planPanel({ rivet: universal, panel: skin, members, greatestPitch });
			return checks.find(({ what, least }) => what === 'pitch' && !least)?.limit;
		};
		// 10D of a rivet of 1/8 is 1 1/4.
		expect(await limitFor('1in')).toBe(1);
		expect(await limitFor('2in')).toBe(1.25);
		expect(await limitFor('1in', ['1in', '2in', '3in'])).toBe(1.25);
	});

	test('a drilled frame, marked from behind', async () => {
		const drilled = ['1/2in', '1 1/4in', '2in', '2.6in', '3.7in'];
		const plan = await planned({
			panel: { ...skin, length: 8, width: 4 },
			members: [
				{ name: 'frame', runs: 'across', at: 3, flange: '3/4in', thickness: '0.032in', drilled },
				{ name: 'low', runs: 'along', at: 2, flange: '5/8in', thickness: '0.032in' },
				{ name: 'high', runs: 'along', at: 3.2, flange: '1/2in', thickness: '0.032in' }
			]
		});
		expect(along(plan, 'frame', 'y')).toEqual([0.5, 1.25, 2, 2.6, 3.7]);
		// The frame has a hole at 2: it serves both. 0.3125 to 3 is 2.6875, 3 spaces of 0.895833; 3 to
		// 7.6875 is 4.6875, 5 spaces of 0.9375.
		expect(along(plan, 'low', 'x')).toEqual([
			...steps(0.3125, 2.6875 / 3, 2),
			...steps(3, 0.9375, 5)
		]);
		expect(plan.holes.find(({ crosses }) => crosses)).toMatchObject({
			id: 'A3',
			row: 'frame',
			crosses: 'low',
			layers: [0.032, 0.032, 0.032]
		});
		// None at 3.2: the row stays 1/4 clear of the flange, 2.625 to 3.375, so it ends at 2.375 and
		// begins again at 3.625: 2.0625 in 3 spaces of 0.6875, 4.0625 in 5 of 0.8125.
		expect(along(plan, 'high', 'x')).toEqual([
			...steps(0.3125, 0.6875, 3),
			...steps(3.625, 0.8125, 5)
		]);
		expect(plan.notes.join()).toContain('frame is drilled and has no hole on the line of high');
		expect(plan.order.join()).toContain('through the holes of frame');
		expect(plan.problems).toEqual([]);
	});

	test('a bent edge', async () => {
		const plan = await planned({
			panel: { ...skin, width: 6, trim: '1/8in' },
			members: [{ name: 'strip', runs: 'along', at: 3, flange: '3/4in', thickness: '0.040in' }],
			bends: [{ edge: 'left', leg: '3/4in', angle: 90, radius: '1/8in' }]
		});
		// SB = 1/8 + 0.032 = 0.157; BA = (0.01743 × 0.125 + 0.0078 × 0.032) × 90 = 0.21855.
		// Flats 0.593 and 9.843; developed 10.65455; with 1/8 on both sides 10.90455 by 6.25.
		expect(plan.blank.developed.length).toBeCloseTo(10.65455, 4);
		expect(plan.blank.length).toBeCloseTo(10.90455, 4);
		expect(plan.blank.width).toBe(6.25);
		// The first hole is 5/16 from the tangent line: 0.157 + 0.3125 = 0.4695; run to 9.6875 is 9.218,
		// 10 spaces of 0.9218.
		expect(along(plan, 'strip', 'x')).toEqual(steps(0.4695, 0.9218, 10));
		// On the blank, a place has 0.125 + 0.593 + 0.21855 − 0.157 added.
		expect(plan.blank.origin.x).toBeCloseTo(0.77955, 4);
		// 10.65455 × 6 × 0.032 × 0.1
		expect(plan.weight).toBeCloseTo(0.20457, 4);
		// Its bend line lies across the grain, which runs along the sheet.
		expect(plan.stock).toMatchObject({ turned: false, sheet: { length: 48, width: 24 } });
		expect(plan.problems).toEqual([]);
	});

	test('a corner bent both ways', async () => {
		const bend = { leg: '3/4in', angle: 90, radius: '1/8in' };
		const plan = await planned({
			panel: { ...skin, width: 6 },
			members: [{ name: 'strip', runs: 'along', at: 3, flange: '3/4in', thickness: '0.040in' }],
			bends: [
				{ ...bend, edge: 'left' },
				{ ...bend, edge: 'bottom', radius: '5/32in' }
			]
		});
		// Tangent lines are one setback in: 1/8 + 0.032 = 0.157 and 5/32 + 0.032 = 0.18825. Twice the
		// larger radius is 5/16, over the 1/8 for sheet up to 0.064 (pp. 4-71, 4-72).
		expect(plan.reliefs).toEqual([{ x: 0.157, y: 0.18825, diameter: 0.3125 }]);
		expect(plan.notes.join()).toContain('a relief hole of 5/16 in where');
		expect(plan.order.join()).toContain('Drill the relief holes');
		// A small radius does not make a small hole, and thicker sheet wants a larger one.
		expect(reliefDiameter(1 / 32, 0.032)).toBe(1 / 8);
		expect(reliefDiameter(1 / 32, 0.072)).toBe(3 / 16);
		expect(reliefDiameter(1 / 32, 0.19)).toBeNull();
	});

	test('many rows that are left out are counted, not all named', async () => {
		const long = { runs: 'along', flange: '3/4in', thickness: '0.032in' };
		const members = Array.from({ length: 9 }, (_, i) => ({
			...long,
			name: `S${i + 1}`,
			at: i + 1
		}));
		const plan = await planned({
			panel: { ...skin, length: '900in', width: '10in' },
			members,
			greatestPitch: '1in'
		});
		expect(plan.problems).toContain(
			'A plan holds 2000 holes; S3, S4, S5 and 4 more would go over that and are left out: make the greatest pitch larger.'
		);
	});

	test('a row of too many holes, and rows that are too many together', async () => {
		const long = { runs: 'along', flange: '3/4in', thickness: '0.032in' };
		const plan = await planned({
			panel: { ...skin, length: '400in' },
			// 400 in at 1/2 in: about 800 holes a row; the whole length at 3/8 in is over 1,000.
			members: ['low', 'middle', 'high'].map((name, i) => ({ ...long, name, at: 2 + 2 * i })),
			stock: [{ length: '400in', width: '8in' }],
			greatestPitch: '1/2in'
		});
		expect(plan.problems).toContain(
			'A plan holds 2000 holes; high would go over that and is left out: make the greatest pitch larger.'
		);
		const closer = await planned({
			panel: { ...skin, length: '400in' },
			members: [{ ...long, name: 'low', at: 2 }],
			stock: [{ length: '400in', width: '8in' }],
			greatestPitch: '3/8in'
		});
		expect(closer.problems).toContain(
			'A row holds 1000 holes; low would go over that and is left out: make the greatest pitch larger.'
		);
		expect(closer.holes).toEqual([]);
	});

	test('a panel without members says why it has no holes', async () => {
		const plan = await planned({ panel: skin });
		expect(plan.problems).toEqual([]);
		expect(plan.notes).toEqual([
			'The panel has no members, so no holes are laid out: add its frames and stringers.'
		]);
	});

	test('flush heads', async () => {
		const file = (thickness: string) => ({
			panel: { ...skin, thickness },
			members: [{ name: 'frame', runs: 'across', at: 3, flange: 1, thickness: '0.032in' }],
			rivet: { head: 'countersunk' }
		});
		// Margin 2.5 × 1/8 + 1/16 = 3/8; run 7 1/4, 8 spaces.
		const thin = await planned(file('0.032in'));
		expect(along(thin, 'frame', 'y')).toEqual(steps(0.375, 7.25 / 8, 8));
		// 0.064 + 0.1875 = 0.2515, up to 5/16.
		expect(thin.rivets[0]?.number).toBe('MS20426AD4-5');
		// 1/8 in rivets want 0.050 for a countersink, 5/32 in ones 0.064.
		expect(thin.flush).toMatchObject([{ rivet: 0.125, way: 'dimple' }]);
		const thick = await planned(file('0.050in'));
		expect(thick.flush).toMatchObject([{ rivet: 0.15625, way: 'dimple' }]);
		const smaller = { head: 'countersunk', diameter: '1/8in' };
		const small = await planned({ ...file('0.050in'), rivet: smaller });
		expect(small.flush).toMatchObject([{ rivet: 0.125, way: 'countersink' }]);
		expect(small.problems).toEqual([expect.stringContaining('5/32 in')]);
	});
});
