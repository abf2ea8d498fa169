import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCheck, checkCards } from '../../../src/lib/engine/check/catalogue.ts';
import { type Checkup, checkPart } from '../../../src/lib/engine/check/check.ts';
import { partDrawing } from '../../../src/lib/engine/check/drawings/part-drawing.ts';
import { instrumentById } from '../../../src/lib/engine/check/instruments.ts';
import { nextSteps } from '../../../src/lib/engine/check/next.ts';
import { markOwn } from '../../../src/lib/engine/check/own.ts';
import { sayTally, sayTold } from '../../../src/lib/engine/check/say.ts';
import { GivenError } from '../../../src/lib/engine/solver/read-givens.ts';
import { ruleById } from '../../../src/lib/engine/trade/rules.ts';

type Typed = Readonly<Record<string, string>>;

async function checked(id: string, values: Typed, tool = 'caliper'): Promise<Checkup> {
	const { check } = await loadCheck(id);
	return checkPart(check, { values, instrument: instrumentById(tool) ?? null, units: 'in' });
}

/** What does not hold: name, place from 1, margin to a ten-thousandth, verdict. */
function offIn({ limits }: Checkup) {
	return limits
		.filter(({ verdict }) => verdict !== 'holds')
		.map(({ limit, place, margin, verdict }) =>
			[limit.what, place === null ? '' : place + 1, margin.toFixed(4), verdict].join(' ')
		);
}

const edge = { D: '1/8', head: 'protruding' };
const head = { D: '1/8' };
const row = { length: '10', endMargin: '3/8', greatestPitch: '3/4', D: '1/8', head: 'protruding' };
const angle = { R: '.16', T: '.04', legs: '1,2,1', angles: '90,90', tolerance: '1/32' };

/*
 * Limits by hand, D = 1/8 in: edge distance 2D = 0.250 to 4D = 0.500 (FAA-H-8083-31B, pp. 4-33,
 * 4-34), flush 2.5D = 0.3125; shop head 1.25D = 0.15625 to 1.66D = 0.2075 wide and 0.33D = 0.04125
 * to 0.66D = 0.0825 high (Fig. 4-76); pitch 3D = 0.375 (p. 4-34); 3T of 0.040 in = 0.120, so a
 * rivet of 1/8 in (p. 4-32); grip 0.072 + 1.5D = 0.2595, so 5/16 in; final drill No. 30 = 0.1285
 * (Fig. 4-90); radius of 2024-T3, 0.040 in: 0.16, which is 5/32 in (Fig. 4-124).
 */
const table: readonly [id: string, values: Typed, tool: string, off: readonly string[]][] = [
	['edge-distance', { ...edge, measured: '0.29' }, 'caliper', []],
	// On the limit, a division to either side, and a division further.
	['edge-distance', { ...edge, measured: '0.25' }, 'caliper', ['Edge distance  0.0000 undecided']],
	['edge-distance', { ...edge, measured: '0.251' }, 'caliper', ['Edge distance  0.0010 undecided']],
	[
		'edge-distance',
		{ ...edge, measured: '0.249' },
		'caliper',
		['Edge distance  -0.0010 undecided']
	],
	['edge-distance', { ...edge, measured: '0.252' }, 'caliper', []],
	['edge-distance', { ...edge, measured: '0.248' }, 'caliper', ['Edge distance  -0.0020 fails']],
	['edge-distance', { ...edge, measured: '0.249' }, 'micrometer', ['Edge distance  -0.0010 fails']],
	['edge-distance', { ...edge, measured: '17/64' }, 'scale', ['Edge distance  0.0156 undecided']],
	['edge-distance', { ...edge, measured: '9/32' }, 'scale', []],
	// 6.35 mm is 1/4 in; 0.5 mm is 0.0197 in.
	[
		'edge-distance',
		{ ...edge, measured: '6.8 mm' },
		'scale-mm',
		['Edge distance  0.0177 undecided']
	],
	['edge-distance', { ...edge, measured: '7 mm' }, 'scale-mm', []],
	['edge-distance', { ...edge, measured: '0.51' }, 'caliper', ['Edge distance  -0.0100 fails']],
	[
		'edge-distance',
		{ D: '1/8', head: 'countersunk', measured: '0.3' },
		'caliper',
		['Edge distance  -0.0125 fails']
	],
	['shop-head-check', { ...head, width: '0.19', height: '0.06' }, 'caliper', []],
	[
		'shop-head-check',
		{ ...head, width: '0.21,0.15,0.2075', height: '0.04,0.09,0.06' },
		'micrometer',
		[
			'Head width 1 -0.0025 fails',
			'Head height 1 -0.0013 fails',
			'Head width 2 -0.0063 fails',
			'Head height 2 -0.0075 fails',
			'Head width 3 0.0000 undecided'
		]
	],
	['rivet-diameter', { thickest: '0.04', measured: '1/8' }, 'caliper', []],
	[
		'rivet-diameter',
		{ thickest: '0.04', measured: '-3' },
		'caliper',
		['Rivet diameter  -0.0262 fails']
	],
	[
		'rivet-diameter',
		{ thickest: '0.04', measured: '5/32' },
		'caliper',
		['Rivet diameter  -0.0156 fails']
	],
	[
		'rivet-diameter-from-stack',
		{ layers: '0.032,0.04,0.025', measured: '3/32' },
		'caliper',
		['Rivet diameter  -0.0262 fails']
	],
	['rivet-length', { layers: '0.032,0.04', D: '1/8', measured: '-5' }, 'caliper', []],
	[
		'rivet-length',
		{ layers: '0.032,0.04', D: '1/8', measured: '1/4' },
		'caliper',
		['Rivet length  -0.0095 fails']
	],
	[
		'rivet-length',
		{ layers: '0.032,0.04', D: '1/8', measured: '3/8' },
		'caliper',
		['Rivet length  -0.0313 fails']
	],
	[
		'rivet-row',
		{ ...row, measured: '0.2,0.9,1.7,2' },
		'caliper',
		['Pitch 2 -0.0500 fails', 'Pitch 3 -0.0750 fails', 'First hole to its end  -0.0500 fails']
	],
	[
		'rivet-row',
		{ ...row, measured: '9.1,9.8' },
		'caliper',
		['Last hole to its end  -0.0500 fails']
	],
	[
		'drill-for-rivet',
		{ D: '1/8', measured: '0.1285,0.124,0.16', tolerance: '0.003' },
		'caliper',
		['Hole 2 -0.0010 undecided', 'Hole 3 -0.0285 fails', 'Hole 3 -0.0038 fails']
	],
	[
		'least-bend-radius',
		{ alloy: '2024-T3', T: '0.04', measured: '1/8' },
		'scale',
		['Inside radius  -0.0313 fails']
	],
	[
		'developed-width',
		{ ...angle, bent: '1,2,1.05', blank: '3.76' },
		'scale',
		['Leg as bent 3 -0.0188 fails']
	],
	[
		'blank-size',
		{
			finishedLength: '10',
			finishedWidth: '4',
			trimmedEnds: '2',
			endTrim: '1/8',
			trimmedEdges: '1',
			edgeTrim: '1/8',
			tolerance: '1/32',
			length: '10 1/4',
			width: '4'
		},
		'scale',
		['Width of the blank  -0.0938 fails']
	],
	[
		'bar-pieces',
		{ bar: '48', piece: '6', kerf: '1/16', tolerance: '1/32', measured: '6,6.05,5.9' },
		'caliper',
		['Piece 2 -0.0187 fails', 'Piece 3 -0.0687 fails']
	]
];

test.each(table)('%s %o with a %s', async (id, values, tool, off) => {
	expect(offIn(await checked(id, values, tool))).toEqual(off);
});

test('twelve edge distances: nine hold, two cannot be told, one is out', async () => {
	const measured =
		'0.309\n0.315\n0.301\n0.322\n0.296\n0.287\n0.274\n0.251\t0.250\t0.252\n0.262\n0.236\n0.249\n0.268\n';
	const found = await checked('edge-distance', { ...edge, measured });
	expect(offIn(found)).toEqual([
		'Edge distance 8 0.0010 undecided',
		'Edge distance 10 -0.0140 fails',
		'Edge distance 11 -0.0010 undecided'
	]);
	expect(found.verdict).toBe('fails');
	const [eighth] = found.measured.map(({ features }) => features[7]);
	expect(eighth?.readings).toEqual([0.251, 0.25, 0.252]);
	expect([eighth?.value, eighth?.spread].map((one) => one?.toFixed(4))).toEqual([
		'0.2510',
		'0.0020'
	]);
	// 3.370 in over twelve.
	expect(
		found.summaries.map(({ what, of, mean, spread }) => [
			what,
			of,
			mean.toFixed(4),
			spread.toFixed(4)
		])
	).toEqual([['Edge distance', 12, '0.2808', '0.0860']]);
	expect(found.limits.filter(({ place }) => place === 9).map((one) => sayTold(found, one))).toEqual(
		[
			'Hole 10: edge distance 0.236 in is 1.89D, below 2D by 0.014 in',
			'Hole 10: edge distance 0.236 in is 1.89D, below 4D by 0.264 in'
		]
	);
	expect(nextSteps(found)).toEqual([
		expect.stringMatching(/^Hole 10: leave the hole as it is/),
		'Measure holes 8 and 11 again with a micrometer, three times each.'
	]);
});

describe('a row of twelve holes', () => {
	const twelve = { ...row, length: '8 1/2' };
	const holes = [0.375, 1.08, 1.784, 2.489, 3.193, 3.898, 4.602, 5.307, 6.011, 6.716, 7.42, 8.125];
	const rowWith = (other: Readonly<Record<number, number>>, of = holes.length) => {
		const measured = holes.slice(0, of).map((at, i) => (at + (other[i + 1] ?? 0)).toFixed(3));
		return checked('rivet-row', { ...twelve, measured: measured.join(', ') });
	};

	test.each([
		[0.09, 'about 0.090 in too far from the reference edge: spaces 5 and 6'],
		[-0.09, 'about 0.090 in too near to the reference edge: spaces 5 and 6']
	])('with the sixth %f in off is told as one hole out of place', async (off, says) => {
		expect(nextSteps(await rowWith({ 6: off }))).toEqual([
			expect.stringMatching(new RegExp(`^Hole 6 stands ${says} come out right together`))
		]);
	});

	test('stepped off too wide from the sixth on has no one hole out of place', async () => {
		const shifted = Object.fromEntries([6, 7, 8, 9, 10, 11].map((hole) => [hole, 0.09]));
		expect(nextSteps(await rowWith(shifted))).toEqual([
			expect.stringMatching(/^Space 5: leave the holes, and ask/)
		]);
		expect(nextSteps(await rowWith({ 6: 0.09 }, 6))).toEqual([
			expect.stringMatching(/^Space 5: stop drilling: the row needs a space more/)
		]);
	});

	test('is not judged before all are in, but for one that fails', async () => {
		expect(sayTally(await rowWith({}, 1))).toBe('1 of 12 holes is in, and it holds so far.');
		const two = await rowWith({}, 2);
		expect([two.soFar, sayTally(two)]).toEqual([
			{ here: 2, of: 12 },
			'2 of 12 holes are in, and both hold so far.'
		]);
		expect(sayTally(await rowWith({ 2: 0.2 }, 2))).toMatch(
			/^2 of 12 holes are in\. So far: 1 of 3 fails, 2 hold\.$/
		);
		const all = await rowWith({});
		expect([all.soFar, all.verdict]).toEqual([null, 'holds']);
	});

	test('is drawn with crosses whose arms are whole on all sides', async () => {
		const found = await rowWith({});
		const chain = 12;
		const arms = partDrawing(found, 480)?.shapes.flatMap((shape) =>
			shape.kind === 'path' && shape.line === 'centre' ? [shape.d] : []
		);
		expect(arms).toHaveLength(4 * holes.length);
		for (const d of arms ?? []) {
			const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = (d.match(/-?[\d.]+/g) ?? []).map(Number);
			// The first stroke of a chain line; what is longer ends in a gap or a dot.
			expect(Math.hypot(x2 - x1, y2 - y1)).toBeLessThan(chain);
		}
	});

	test('keeps to the pitch that was entered, which is no rule’s', async () => {
		const found = await rowWith({ 6: 0.09 });
		const told = found.limits.find(({ verdict }) => verdict === 'fails');
		expect(told && sayTold(found, told)).toBe(
			'Space 5: pitch 0.795 in is 6.36D, above the given 0.750 in by 0.045 in'
		);
	});
});

test('the margin in words', async () => {
	const one = await checked('edge-distance', { ...edge, measured: '0.29' });
	expect(one.limits.map((told) => sayTold(one, told))[0]).toBe(
		'Edge distance 0.290 in is 2.32D: above 2D by 0.040 in'
	);
});

test('a gauge tells the side and no size', async () => {
	const found = await checked(
		'shop-head-check',
		{ ...head, width: 'go,over', height: 'go,under' },
		'gauge'
	);
	const said = found.limits
		.filter(({ place }) => place === 1)
		.map((one) => [sayTold(found, one), one.verdict]);
	expect(said).toEqual([
		['Head 2: head width over, at least 1.25D', 'holds'],
		['Head 2: head width over, at most 1.66D', 'fails'],
		['Head 2: head height under, at least 0.33D', 'fails'],
		['Head 2: head height under, at most 0.66D', 'holds']
	]);
	expect(found.items[1]).not.toHaveProperty('judgement');
	expect(found.summaries).toEqual([]);
});

test('what was left out is not looked at', async () => {
	const bare = { length: '10', endMargin: '3/8', greatestPitch: '3/4', measured: '0.375,1' };
	const found = await checked('rivet-row', bare);
	expect(found.limits.map(({ limit }) => limit.what)).toEqual(['Pitch']);
	expect(found.left.map(({ what }) => what)).toEqual([
		'Pitch',
		'First hole to its end',
		'Last hole to its end'
	]);
});

describe('own results are marked, the slip named', () => {
	const own = async (id: string, values: Typed, results: Typed) => {
		const { family } = await loadCheck(id);
		const found = await checked(id, values);
		const { results: all } = await markOwn(family, found, results, 'in');
		return all.map(({ key, place, verdict }) => [
			key,
			place,
			verdict.kind === 'rework' ? verdict.cause : verdict.kind
		]);
	};

	test('one for the part', async () => {
		const values = { layers: '0.032,0.04', D: '1/8', measured: '-5' };
		expect(await own('rivet-length', values, { grip: '0.072', needed: '0.197' })).toEqual([
			['grip', null, 'accept'],
			['needed', null, expect.objectContaining({ kind: 'slip', slips: ['oneD'] })]
		]);
	});

	test('one for every head', async () => {
		const values = { ...head, width: '0.19,0.21', height: '0.06,0.04' };
		expect(await own('shop-head-check', values, { judgement: 'accept; drive more' })).toEqual([
			['judgement', 0, 'accept'],
			['judgement', 1, { kind: 'slip', slips: ['drivenMore'] }]
		]);
		await expect(own('shop-head-check', values, { judgement: 'accept' })).rejects.toThrow(
			'judgement: give 2, one for every head.'
		);
		await expect(own('shop-head-check', values, { width: '1' })).rejects.toThrow(
			/has no result width; it has leastWidth, mostWidth/
		);
	});
});

const refused: readonly [id: string, values: Typed, says: RegExp][] = [
	['edge-distance', { ...edge, measured: '0' }, /more than zero/],
	['edge-distance', { ...edge, measured: '0.3; -0.2' }, /value 2: A size is not below zero/],
	['edge-distance', { ...edge, measured: '0.3; x' }, /value 2/],
	['edge-distance', { ...edge, measured: '0.3; 7 mm; 0.4' }, /give every value its unit/],
	// Inches beside millimetres, where the last unit would make 0.29 in into 0.29 mm.
	['edge-distance', { ...edge, measured: '0.29, 7.3mm' }, /give every value its unit/],
	// A decimal point left out on the keypad: 0.29 in.
	['edge-distance', { ...edge, measured: '0.3; 29' }, /^Hole 2: That is over 40D from the edge/],
	['edge-distance', { ...edge, measured: '  ' }, /also needs measured \(edge distance/],
	['edge-distance', { ...edge, mesured: '0.3' }, /takes no mesured; it takes D, head, measured/],
	['edge-distance', { D: '1/8', measured: '0.3' }, /also needs head/],
	['edge-distance', { ...edge, measured: Array(201).fill('0.3').join(';') }, /at most 200/],
	[
		'shop-head-check',
		{ ...head, width: '0.19', height: '0.2' },
		/cannot be more than the 1.5D of shank/
	],
	[
		'shop-head-check',
		{ ...head, width: '0.19,0.12', height: '0.06,0.06' },
		/^Head 2: A head cannot be narrower/
	],
	['shop-head-check', { ...head, width: '0.19,0.2', height: '0.06' }, /2 of width and 1 of height/],
	['rivet-row', { ...row, measured: '0.4,11' }, /beyond the end of the piece/],
	['rivet-row', { ...row, measured: '1,0.4' }, /out of order/],
	[
		'rivet-row',
		{ ...row, endMargin: '6', measured: '1' },
		/The end margins take up the whole piece/
	],
	['developed-width', { ...angle }, /Give what was measured: blank or bent/],
	['developed-width', { ...angle, bent: '1,2' }, /Give every leg as bent/],
	[
		'bar-pieces',
		{ bar: '4', piece: '3', kerf: '0', tolerance: '1/32', measured: '5' },
		/longer than its bar/
	],
	['shop-head', { D: '1/8' }, /check one of blank-size/]
];

test.each(refused)('%s refuses %o in one sentence', async (id, values, says) => {
	await expect(checked(id, values)).rejects.toThrow(says);
});

test('a gauge is refused where a size is wanted', async () => {
	await expect(checked('rivet-row', { ...row, measured: 'go' }, 'gauge')).rejects.toThrow(
		GivenError
	);
	await expect(checked('edge-distance', { ...edge, measured: 'fits' }, 'gauge')).rejects.toThrow(
		/say go, under or over/
	);
});

test('labelled units may be mixed, and a comma is a decimal point where lines part the values', async () => {
	const mixed = await checked('edge-distance', { ...edge, measured: '0.29 in; 7.5 mm' });
	const lines = await checked('edge-distance', { ...edge, measured: '0,29\n0,295276' });
	const shared = await checked('edge-distance', { ...edge, measured: '7.366, 7.5 mm' });
	const sizes = ({ limits }: Checkup) => limits.map(({ value }) => value.toFixed(4));
	expect(sizes(mixed)).toEqual(sizes(lines));
	expect(sizes(mixed)).toEqual(sizes(shared));
});

test('every limit has a rule, a step behind it and what to do', async () => {
	for (const { id } of checkCards) {
		const { check } = await loadCheck(id);
		for (const limit of [...check.keeps]) {
			expect(ruleById(limit.rule ?? '').sources.length, `${id}: ${limit.what}`).toBeGreaterThan(0);
			expect(check.of.steps[limit.behind]?.skill, `${id}: ${limit.behind}`).toBeTruthy();
			expect(limit.next).toMatch(/\.$/);
		}
	}
});

test('a reading nearer to a limit than its instrument reads is never told as held or failed', async () => {
	await fc.assert(
		fc.asyncProperty(
			fc.integer({ min: 2300, max: 2700 }),
			fc.constantFrom('scale', 'caliper', 'micrometer'),
			async (tenThousandths, tool) => {
				const size = tenThousandths / 10_000;
				const found = await checked('edge-distance', { ...edge, measured: String(size) }, tool);
				const division = instrumentById(tool)?.division ?? 0;
				// In whole ten-thousandths, so that the test has no rounding of its own.
				const off = Math.abs(tenThousandths - 2500);
				const near = off <= Math.floor(division * 10_000 + 1e-6);
				const wanted = near ? 'undecided' : tenThousandths > 2500 ? 'holds' : 'fails';
				expect(found.limits[0]?.verdict).toBe(wanted);
			}
		),
		{ numRuns: 60 }
	);
});
