import { expect, test } from 'vitest';
import { drillForRivet } from '../../../src/lib/engine/methods/drill-for-rivet.ts';
import { drillSize } from '../../../src/lib/engine/quantity/drills.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

/** FAA-H-8083-31B p. 4-39, Fig. 4-90, with the names of the drills as it prints them. */
const rows = [
	{ rivet: '3/32', D: 3 / 32, pilot: '3/32', final: '40', clearance: 0.00425 },
	{ rivet: '1/8', D: 1 / 8, pilot: '1/8', final: '30', clearance: 0.0035 },
	{ rivet: '5/32', D: 5 / 32, pilot: '5/32', final: '21', clearance: 0.00275 },
	{ rivet: '3/16', D: 3 / 16, pilot: '3/16', final: '11', clearance: 0.0035 },
	{ rivet: '1/4', D: 1 / 4, pilot: '1/4', final: 'F', clearance: 0.007 }
];

test.each(rows)(
	'published, Fig. 4-90: $rivet rivet, pilot $pilot, final $final',
	({ D, pilot, final, clearance }) => {
		const values = evaluate(drillForRivet, { D });
		expect(values.pilot).toBe(drillSize(pilot)?.valueOf());
		expect(values.final).toBe(drillSize(final)?.valueOf());
		expect(values.clearance).toBeCloseTo(clearance, 12);
	}
);

test('rule application, 1940s service handbook, section I par. 16: 1/8 in a No. 30 hole has 0.0035', () => {
	expect(evaluate(drillForRivet, { D: 1 / 8 }).clearance).toBeCloseTo(0.0035, 12);
});

test('a rivet that the figure does not list is refused', () => {
	for (const D of [1 / 16, 7 / 32, 0.1]) {
		expect(() => evaluate(drillForRivet, { D })).toThrow(/choose one of these/);
	}
});
