import { expect, test } from 'vitest';
import { edgeDistance } from '../../../src/lib/engine/methods/edge-distance.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

const handbook = 'FAA-H-8083-31B ch. 4';

interface Row {
	readonly from: string;
	readonly D: number;
	readonly head: string;
	readonly wanted: Readonly<Record<string, number>>;
}

const rows: readonly Row[] = [
	{
		from: `published, ${handbook} p. 4-34: 3/32 protruding, least 3/16, preferred 1/4`,
		D: 3 / 32,
		head: 'protruding',
		wanted: { least: 3 / 16, preferred: 1 / 4 }
	},
	{
		from: `published, ${handbook} p. 4-96, lap patch: 1/8 protruding, least 1/4`,
		D: 1 / 8,
		head: 'protruding',
		wanted: { least: 1 / 4 }
	},
	{
		from: `published, ${handbook} p. 4-96, lap patch: 5/32 protruding, least 5/16`,
		D: 5 / 32,
		head: 'protruding',
		wanted: { least: 5 / 16 }
	},
	{
		from: `rule application, ${handbook} p. 4-34, Fig. 4-79: 1/8 countersunk`,
		D: 1 / 8,
		head: 'countersunk',
		wanted: { least: 5 / 16, preferred: 3 / 8 }
	},
	{
		from: 'rule application, AL0992 ch. 2: 1/8 protruding',
		D: 1 / 8,
		head: 'protruding',
		wanted: { least: 0.25, greatest: 0.5 }
	},
	{
		from: 'rule application, AL0992 ch. 2: 1/8 countersunk',
		D: 1 / 8,
		head: 'countersunk',
		wanted: { least: 0.3125, greatest: 0.5 }
	},
	{
		from: 'rule application, AL0992 ch. 2: 3/32 protruding',
		D: 3 / 32,
		head: 'protruding',
		wanted: { least: 0.1875, greatest: 0.375 }
	},
	{
		from: 'rule application, AL0992 ch. 2: 3/32 countersunk',
		D: 3 / 32,
		head: 'countersunk',
		wanted: { least: 0.234375, greatest: 0.375 }
	}
];

test.each(rows)('$from', ({ D, head, wanted }) => {
	const values = evaluate(edgeDistance, { D, head });
	for (const [key, value] of Object.entries(wanted)) expect(values[key]).toBeCloseTo(value, 12);
});

/** Least and greatest by rivet dash number in 64ths of an inch, counted out by hand. */
const in64ths = [
	{ dash: 3, protruding: 12, countersunk: 15, greatest: 24 },
	{ dash: 4, protruding: 16, countersunk: 20, greatest: 32 },
	{ dash: 5, protruding: 20, countersunk: 25, greatest: 40 },
	{ dash: 6, protruding: 24, countersunk: 30, greatest: 48 },
	{ dash: 8, protruding: 32, countersunk: 40, greatest: 64 }
];

test.each(in64ths)('-$dash rivets in 64ths', ({ dash, protruding, countersunk, greatest }) => {
	const least = { protruding, countersunk };
	for (const head of ['protruding', 'countersunk'] as const) {
		const values = evaluate(edgeDistance, { D: dash / 32, head });
		expect(values).toMatchObject({
			least: least[head] / 64,
			preferred: (least[head] + 4) / 64,
			greatest: greatest / 64
		});
	}
});

test('the least of the next larger rivet is the preferred one for a protruding head only', () => {
	const slipped = (head: string) =>
		evaluate(edgeDistance, { D: 0.125, head }, { slips: { preferred: 'nextRivet' } }).preferred;
	expect(slipped('protruding')).toBeCloseTo(0.3125, 12);
	expect(slipped('countersunk')).toBeCloseTo(0.390625, 12);
});
