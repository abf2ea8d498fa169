import { describe, expect, test } from 'vitest';
import { drillSize } from '../../../src/lib/engine/quantity/drills.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { rules } from '../../../src/lib/engine/trade/rules.ts';
import type { Key } from '../../../src/lib/engine/trade/table/axis.ts';
import { cellAt, columnOf, rowOf } from '../../../src/lib/engine/trade/table/reading.ts';
import type { Table } from '../../../src/lib/engine/trade/table/table.ts';
import {
	allowances90,
	allowancesPerDegree
} from '../../../src/lib/engine/trade/tables/allowance-chart.ts';
import { densities, density } from '../../../src/lib/engine/trade/tables/densities.ts';
import { chartSize, drillChart } from '../../../src/lib/engine/trade/tables/drill-chart.ts';
import { leastEdge } from '../../../src/lib/engine/trade/tables/edge-distances.ts';
import { kChart } from '../../../src/lib/engine/trade/tables/k-chart.ts';
import { leastRadii, minimumRadius } from '../../../src/lib/engine/trade/tables/least-radius.ts';
import { letters, rivetAlloys } from '../../../src/lib/engine/trade/tables/rivet-alloys.ts';
import { headNumber } from '../../../src/lib/engine/trade/tables/rivet-heads.ts';
import {
	finalDrill,
	pilotDrill,
	rivetDrills
} from '../../../src/lib/engine/trade/tables/rivet-drills.ts';
import { rivetPitches } from '../../../src/lib/engine/trade/tables/rivet-pitches.ts';
import {
	perInchOfWidth,
	rivetsPerInch
} from '../../../src/lib/engine/trade/tables/rivets-per-inch.ts';
import * as again from './second-reading.ts';

function at(table: Table, row: Key, column: Key) {
	return cellAt(table, rowOf(table, row), columnOf(table, column));
}

function inches(fraction: string): number {
	const [top = NaN, bottom = NaN] = fraction.split('/').map(Number);
	return top / bottom;
}

describe('every table against a second reading of its document', () => {
	test('drills for rivets', () => {
		expect(rivetDrills.rows.keys).toHaveLength(again.rivetDrills.length);
		for (const [rivet, pilot, final, size] of again.rivetDrills) {
			// The document cuts its decimals off: 3/32 is 0.0937 there.
			expect(Math.floor(pilotDrill.run(inches(rivet)) * 1e4) / 1e4).toBe(pilot);
			expect(finalDrill.run(inches(rivet))).toBe(size);
			expect(drillSize(final)?.valueOf()).toBe(size);
		}
	});

	test('number and letter drills', () => {
		const rows = again.drills.split(' ').map((one) => one.split('='));
		expect(rows).toHaveLength(86);
		expect(drillChart.rows.keys).toHaveLength(86);
		for (const [name = '', size] of rows) expect(chartSize.run(name), name).toBe(Number(size));
	});

	test('least pitches by rows', () => {
		expect(rivetPitches.rows.keys).toHaveLength(again.rivetPitches.length);
		for (const line of again.rivetPitches) {
			const [rows = NaN, protruding, countersunk] = line
				.replaceAll('-1/2', '.5')
				.replaceAll('D', '')
				.split(' ')
				.map(Number);
			expect(at(rivetPitches, rows, 'protruding')).toBe(protruding);
			expect(at(rivetPitches, rows, 'countersunk')).toBe(countersunk);
		}
	});

	test('least bend radii', () => {
		const columns = ['5052-O', '6061-T4', '6061-T6', '7075-T6', '2024-T3', '2024-T6'];
		expect(leastRadii.rows.keys).toHaveLength(again.leastRadii.length);
		for (const [thickness = NaN, ...radii] of again.leastRadii) {
			expect(columns.map((alloy) => minimumRadius.run(alloy, thickness))).toEqual(radii);
		}
	});

	test('K', () => {
		expect(kChart.rows.keys).toHaveLength(179);
		for (const [angle, k] of again.k) expect(at(kChart, angle, 'k')).toBe(k);
	});

	test('bend allowances', () => {
		for (const [thickness, radius, at90, perDegree] of again.allowances) {
			const cell = [thickness, inches(radius)] as const;
			expect(at(allowances90, ...cell), `${thickness} ${radius}`).toBe(at90);
			expect(at(allowancesPerDegree, ...cell)).toBe(perDegree);
		}
		for (const table of [allowances90, allowancesPerDegree]) {
			expect(table.cells.flat().filter((cell) => cell !== null)).toHaveLength(229);
		}
	});

	test('rivets per inch', () => {
		const diameters = ['3/32', '1/8', '5/32', '3/16', '1/4'].map(inches);
		expect(rivetsPerInch.rows.keys).toHaveLength(again.rivetsPerInch.length);
		for (const row of again.rivetsPerInch) {
			const [thickness, ...counts] = row.split(' ');
			for (const [i, D] of diameters.entries()) {
				const read = () => perInchOfWidth.run(Number(thickness), D);
				if (counts[i] === '-') expect(read, row).toThrow(TradeError);
				else expect(read(), row).toBe(Number(counts[i]));
			}
		}
	});

	test('densities', () => {
		expect(densities.rows.keys).toHaveLength(again.densities.length);
		for (const [alloy, value] of again.densities) expect(density.run(`${alloy}-T4`)).toBe(value);
		expect([...densities.rowSources.keys()]).toEqual(['6061', '7075']);
		for (const { standing } of densities.rowSources.values()) expect(standing).toBe('memory');
	});

	test('alloy letters, head numbers and edge distances', () => {
		expect(rivetAlloys.rows.keys).toHaveLength(again.alloyLetters.length);
		for (const [code, alloy] of again.alloyLetters) expect(letters.run(alloy)).toBe(code);
		expect(again.headNumbers.map(([head]) => headNumber.run(head))).toEqual(
			again.headNumbers.map(([, number]) => number)
		);
		expect(again.leastEdge.map(([head]) => leastEdge.run(head))).toEqual(
			again.leastEdge.map(([, factor]) => factor)
		);
	});
});

describe('suspect cells are refused', () => {
	test('all of the allowance chart, with both figures', () => {
		expect(allowances90.suspect).toHaveLength(again.suspectAllowances.length);
		for (const [thickness, radius] of again.suspectAllowances) {
			for (const table of [allowances90, allowancesPerDegree]) {
				const read = () => at(table, thickness, inches(radius));
				expect(read, `${thickness} ${radius}`).toThrow(TradeError);
				expect(read).toThrow(
					/^What the allowance chart prints for .* is suspect and is not used: /
				);
			}
		}
	});

	test('both misprints of the K chart', () => {
		for (const angle of [159, 176]) {
			expect(() => at(kChart, angle, 'k')).toThrow(/suspect and is not used: the tangent of/);
		}
	});
});

test('what a document leaves out is refused', () => {
	expect(() => at(kChart, 180, 'k')).toThrow('its rows run from 1 to 179°');
	expect(() => at(allowances90, 0.25, 1 / 32)).toThrow(
		'The allowance chart prints nothing for 0.250 in and 1/32 in.'
	);
	expect(() => finalDrill.run(7 / 32)).toThrow(
		'The drill figure has no row for 7/32 in; its rows are 3/32, 1/8, 5/32, 3/16, 1/4 in: choose one of these.'
	);
	expect(() => density.run('9999')).toThrow('it has 1100, 2014, 2024, 3003, 5052, 6061, 7075.');
	expect(() => chartSize.run('No. 61')).toThrow('has no row for No. 61: write a number from No. 1');
	expect(chartSize.run('1/8')).toBe(0.125);
});

test('the older gauge series shares a row, on whichever chart prints the other one', () => {
	expect(minimumRadius.run('2024-T3', 0.051)).toBe(minimumRadius.run('2024-T3', 0.05));
	expect(at(allowances90, 0.05, 1 / 4)).toBe(at(allowances90, 0.051, 1 / 4));
	expect(() => at(allowances90, 0.05, 1 / 16)).toThrow('suspect');
});

test('rules that state numbers of a table state the ones in it', () => {
	const says = (id: string) => rules[id]?.says ?? '';
	for (const [rivet, , final] of again.rivetDrills) {
		expect(says('drill.rivet')).toContain(`${final.replace('#', 'No. ')} for ${rivet}`);
	}
	for (const [alloy, value] of again.densities.slice(0, 5)) {
		expect(says('cut.density')).toContain(`${alloy} ${value.toFixed(3)}`);
	}
	for (const [code, alloy] of again.alloyLetters) {
		expect(says('number.alloy')).toContain(`${code} ${alloy}`);
	}
	for (const [, number] of again.headNumbers)
		expect(says('number.head')).toContain(`MS20${number}`);
	for (const [, factor] of again.leastEdge) expect(says('edge.least')).toContain(`${factor}D`);
});
