import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PanelPlan, planPanel } from '../../../src/lib/engine/panel/plan.ts';

/*
 * Drawn panels, held to the rules by arithmetic of its own: nothing here calls the planner's
 * geometry or the methods.
 */

const [length, width] = [20, 12];

const sixteenths = (from: number, to: number) =>
	fc.integer({ min: from * 16, max: to * 16 }).map((one) => one / 16);
const gauge = fc.constantFrom(0.025, 0.032, 0.04, 0.05);

const member = fc
	.record({
		runs: fc.constantFrom('across', 'along'),
		place: fc.integer({ min: 1, max: 31 }),
		flange: sixteenths(0.625, 1.75),
		thickness: gauge,
		rows: fc.constantFrom(1, 1, 2)
	})
	// Not in the middle, where neither edge is the nearer one for the full row of two.
	.filter(({ place }) => place !== 16)
	.map(({ place, ...one }) => ({
		...one,
		at: ((one.runs === 'across' ? length : width) * place) / 32
	}));

const cutout = fc.record({
	x: sixteenths(2, 14),
	y: sixteenths(2, 7),
	length: sixteenths(1, 4),
	width: sixteenths(1, 3)
});

const file = fc.record({
	panel: fc.record({
		length: fc.constant(length),
		width: fc.constant(width),
		thickness: gauge,
		alloy: fc.constantFrom('2024-T3', '6061-T6', '7075-T6'),
		cornerRadius: fc.constantFrom(0, 0.25)
	}),
	members: fc.array(member, { maxLength: 5 }),
	cutouts: fc.array(cutout, { maxLength: 1 }),
	doublers: fc.array(
		fc.record({
			x: sixteenths(1, 12),
			y: sixteenths(1, 8),
			length: sixteenths(2, 6),
			width: sixteenths(2, 4),
			thickness: gauge
		}),
		{ maxLength: 1 }
	),
	rivet: fc.record({ head: fc.constantFrom('universal', 'countersunk') }),
	greatestPitch: sixteenths(0.5, 1.25)
});

type File = typeof file extends fc.Arbitrary<infer T> ? T : never;

const drawn = (check: (raw: File, plan: PanelPlan) => void | Promise<void>) =>
	fc.assert(
		fc.asyncProperty(file, async (raw) => check(raw, await planPanel(raw))),
		{ numRuns: 80, seed: 10 }
	);

/** Rows with a limit that fails, by name. */
const told = ({ checks }: PanelPlan) =>
	new Set(checks.filter(({ verdict }) => verdict === 'fails').map(({ row }) => row));

/** Off the halves, so that floating point cannot round one panel up and its mirror down. */
const digits = (value: number) => (value + 1e-8).toFixed(6);

describe('drawn panels', () => {
	test('every hole keeps its distances, or its row is told', () =>
		drawn(({ rivet, cutouts }, plan) => {
			const fails = told(plan);
			const factor = rivet.head === 'countersunk' ? 2.5 : 2;
			for (const hole of plan.holes) {
				const D = hole.rivet.diameter;
				const thickest = Math.max(...hole.layers);
				expect(D).toBeGreaterThanOrEqual(3 * thickest - 1e-9);
				const grip = hole.layers.reduce((sum, one) => sum + one, 0);
				const over = hole.rivet.length - grip - 1.5 * D;
				expect(over).toBeGreaterThanOrEqual(-1e-9);
				expect(over).toBeLessThan(1 / 16);
				const toEdge = Math.min(hole.x, length - hole.x, hole.y, width - hole.y);
				const toOpening = cutouts.map((one) =>
					Math.hypot(
						Math.max(one.x - hole.x, 0, hole.x - one.x - one.length),
						Math.max(one.y - hole.y, 0, hole.y - one.y - one.width)
					)
				);
				const toHoles = plan.holes
					.filter((other) => other !== hole)
					.map(
						(other) =>
							Math.hypot(hole.x - other.x, hole.y - other.y) - 3 * Math.max(D, other.rivet.diameter)
					);
				const near =
					Math.min(toEdge, ...toOpening) < factor * D - 1e-6 || Math.min(...toHoles) < -1e-6;
				if (near) expect(hole.rows.some(({ name }) => fails.has(name))).toBe(true);
			}
		}));

	test('a row is never divided wider than the greatest pitch', () =>
		drawn(({ greatestPitch }, { rows }) => {
			for (const { stretches } of rows) {
				for (const stretch of stretches) {
					stretch.slice(1).forEach((hole, i) => {
						const before = stretch[i] ?? hole;
						const space = Math.hypot(hole.x - before.x, hole.y - before.y);
						expect(space).toBeLessThanOrEqual(greatestPitch + 1e-9);
					});
				}
			}
		}));

	test('mirrored in, mirrored out', () =>
		drawn(async (raw, plan) => {
			const turned = await planPanel({
				...raw,
				members: raw.members.map((one) =>
					one.runs === 'across' ? { ...one, at: length - one.at } : one
				),
				cutouts: raw.cutouts.map((one) => ({ ...one, x: length - one.x - one.length })),
				doublers: raw.doublers.map((one) => ({ ...one, x: length - one.x - one.length }))
			});
			const places = ({ holes }: PanelPlan, x: (at: number) => number) =>
				holes.map((one) => `${digits(x(one.x))} ${digits(one.y)} ${one.rivet.number}`).sort();
			expect(places(turned, (at) => length - at)).toEqual(places(plan, (at) => at));
			expect(turned.weight).toBe(plan.weight);
		}));

	test('weight is area times gauge times density; rivets are the holes, counted', () =>
		drawn(({ panel, cutouts }, plan) => {
			const density = { '2024-T3': 0.1, '6061-T6': 0.098, '7075-T6': 0.101 }[panel.alloy] ?? NaN;
			const open = cutouts.reduce((sum, one) => sum + one.length * one.width, 0);
			const corners = (4 - Math.PI) * panel.cornerRadius ** 2;
			const area = length * width - open - corners;
			expect(plan.weight).toBeCloseTo(area * panel.thickness * density, 9);
			expect(plan.rivets.reduce((sum, { count }) => sum + count, 0)).toBe(plan.holes.length);
		}));
});
