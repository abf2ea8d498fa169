import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { type PanelPlan, planPanel } from '../../../src/lib/engine/panel/plan.ts';
import { planData } from '../../../src/lib/engine/panel/report.ts';
import { readCsv } from '../../../src/lib/exchange/csv.ts';
import { writeDxf } from '../../../src/lib/exchange/panel/dxf.ts';
import { writeSvg } from '../../../src/lib/exchange/panel/svg.ts';
import { writePanelCsv } from '../../../src/lib/exchange/panel/tables.ts';

/** Every sort of part, and names that a file must not trip over. */
const file = {
	panel: {
		name: 'Seitenwand <1> "é", =2+2',
		length: '22in',
		width: '14in',
		thickness: '0.032in',
		cornerRadius: '1/4in',
		trim: '1/8in'
	},
	members: [
		{ name: '=frame, "1"', runs: 'across', at: '55mm', flange: '3/4in', thickness: '0.040in' },
		{ name: 'frame 2', runs: 'across', at: '16in', flange: '1.5in', thickness: '0.040in', rows: 2 },
		{ name: 'stringer', runs: 'along', at: '7in', flange: '5/8in', thickness: '0.032in' }
	],
	doublers: [{ name: 'doubler', x: 1, y: 0, length: 3, width: 4, thickness: '0.040in' }],
	cutouts: [
		{ name: 'window', x: 5, y: 8, length: 3, width: 2 },
		{ name: 'port', x: 10, y: 4, diameter: '2 1/2in' }
	],
	rivet: { head: 'universal' },
	greatestPitch: '1in'
};

interface Place {
	readonly x: number;
	readonly y: number;
}

/** Places in the order of the plan, as every file tells them. */
const places = ({ x, y }: Place) => ({ x, y });

function inSvg(plan: PanelPlan) {
	const circles = writeSvg(plan).matchAll(
		/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" class="holes"/g
	);
	return [...circles].map(([, x, y, r]) => ({ x: Number(x), y: Number(y), r: Number(r) }));
}

function inDxf(plan: PanelPlan) {
	const read = new DxfParser().parseSync(writeDxf(plan));
	if (!read) throw new Error('no drawing');
	return read;
}

interface Circle {
	readonly type: string;
	readonly layer: string;
	readonly center: Place;
	readonly radius: number;
}

function circlesOn(layer: string, plan: PanelPlan): Circle[] {
	const all = inDxf(plan).entities as unknown as Circle[];
	return all.filter((one) => one.type === 'CIRCLE' && one.layer === layer);
}

describe('files of a panel', () => {
	test('table, drawing and DXF agree on every hole', async () => {
		const plan = await planPanel(file);
		const { holes, drills } = planData(plan);
		expect(holes.length).toBeGreaterThan(50);
		const [head, ...rows] = (() => {
			const table = readCsv(writePanelCsv(plan));
			return table.ok ? table.rows : [];
		})();
		expect(head?.slice(0, 4)).toEqual(['hole', 'x', 'y', 'row']);
		const told = holes.map(places);
		expect(rows.map(([, x, y]) => ({ x: Number(x), y: Number(y) }))).toEqual(told);
		expect(rows.map(([id]) => id)).toEqual(holes.map(({ id }) => id));
		// A name that a spreadsheet would take for a formula stays text.
		expect(rows[0]?.[3]).toBe(`'=frame, "1"`);

		const drawn = inSvg(plan);
		expect(drawn.map(places)).toEqual(told);
		const circles = circlesOn('HOLES', plan);
		expect(circles.map(({ center }) => places(center))).toEqual(told);
		const final = new Map(drills.map((one) => [one.rivet, one.final / 2]));
		const radii = holes.map(({ diameter }) => final.get(diameter));
		expect(circles.map(({ radius }) => radius)).toEqual(radii);
		expect(drawn.map(({ r }) => r)).toEqual(radii);
	});

	test('tables in millimetres say so, and hold the same places', async () => {
		const plan = await planPanel(file);
		const rowsOf = (list: 'holes' | 'drills' | 'cut') => {
			const table = readCsv(writePanelCsv(plan, list, 'mm'));
			return table.ok ? table.rows : [];
		};
		const [head, ...rows] = rowsOf('holes');
		expect(head?.slice(0, 7)).toEqual([
			'hole',
			'x mm',
			'y mm',
			'row',
			'crosses',
			'layers mm',
			'grip mm'
		]);
		plan.holes.forEach(({ x, y }, i) => {
			expect(Math.abs(Number(rows[i]?.[1]) - x * 25.4)).toBeLessThan(0.000_6);
			expect(Math.abs(Number(rows[i]?.[2]) - y * 25.4)).toBeLessThan(0.000_6);
		});
		// 0.125, 0.1285 and 0.032 in.
		expect(rowsOf('drills').map((row) => row.slice(0, 5))).toEqual([
			['rivet diameter mm', 'pilot', 'pilot mm', 'final', 'final mm'],
			['3.175', '1/8 in', '3.175', 'No. 30', '3.264']
		]);
		expect(rowsOf('cut')[0]).toEqual(['piece', 'length mm', 'width mm', 'thickness mm']);
		expect(rowsOf('cut')[1]?.[3]).toBe('0.813');
	});

	test('DXF is R12 in inches, with the outline and the openings where they are', async () => {
		const plan = await planPanel(file);
		const { header, entities } = inDxf(plan);
		expect(header).toMatchObject({ $ACADVER: 'AC1009', $INSUNITS: 1, $MEASUREMENT: 0 });
		expect(circlesOn('CUTOUTS', plan)).toMatchObject([{ center: { x: 10, y: 4 }, radius: 1.25 }]);
		type Part = { type: string; layer: string; vertices?: Place[]; center?: Place };
		const outline = (entities as unknown as Part[]).filter(({ layer }) => layer === 'PANEL');
		expect(outline.filter(({ type }) => type === 'ARC')).toHaveLength(4);
		const ends = outline.flatMap(({ vertices = [] }) => vertices);
		expect(Math.max(...ends.map(({ x }) => x))).toBe(22);
		expect(Math.max(...ends.map(({ y }) => y))).toBe(14);
		// Plain ASCII in pairs of lines.
		const text = writeDxf(plan);
		expect(text).toMatch(/^[\x20-\x7e\r\n]*$/);
		expect(text.split('\r\n').length % 2).toBe(1);
	});

	test('SVG is at full size and keeps its names inside', async () => {
		const svg = writeSvg(await planPanel(file));
		expect(svg).toMatch(/^<svg [^>]*width="23in" height="15in" viewBox="-0.5 -0.5 23 15">/);
		expect(svg).not.toContain('<1>');
		expect(svg.match(/<rect [^>]*data-name="frame 2"/)).not.toBeNull();
	});

	test('lists of rivets, drills and cuts', async () => {
		const plan = await planPanel(file);
		const { rivets, blank } = planData(plan);
		const rowsOf = (list: 'rivets' | 'drills' | 'cut') => {
			const table = readCsv(writePanelCsv(plan, list));
			return table.ok ? table.rows.slice(1) : [];
		};
		expect(rowsOf('rivets').map(([number, count]) => ({ number, count: Number(count) }))).toEqual(
			rivets.map(({ number, count }) => ({ number, count }))
		);
		expect(rowsOf('drills')).toEqual([
			['0.125', '1/8 in', '0.125', 'No. 30', '0.1285', expect.any(String)]
		]);
		expect(rowsOf('cut').map(([, ...size]) => size.map(Number))).toEqual([
			[blank.length, blank.width, 0.032],
			[3, 4, 0.04]
		]);
	});
});
