import { alloyOf } from '../alloy.ts';
import { density as byWeight } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byName } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { places } from '../table/writing.ts';

const printed = [
	['1100', 0.098],
	['2014', 0.101],
	['2024', 0.1],
	['3003', 0.099],
	['5052', 0.097],
	['6061', 0.098],
	['7075', 0.101]
] as const;

/** Not read in a document: tasks tell these, and never ask for them. */
const remembered = source('hdbk5', 'nominal value', 'memory');

/** Nominal density of wrought aluminium alloys, whatever the temper. */
export const densities = table({
	id: 'densities',
	title: 'Density of aluminium alloys',
	topic: 'cutting',
	called: 'the density table',
	source: source('aluminum', 'table 4.3'),
	rows: byName(
		'Alloy',
		printed.map(([alloy]) => [alloy as string]),
		{ means: alloyOf }
	),
	...measures({ density: measure('lb/in³', holding(byWeight, places(3))) }),
	cells: printed.map(([, density]) => [density]),
	rowSources: new Map([
		['6061', remembered],
		['7075', remembered]
	])
});

/** Density in lb/in³ of an alloy; the temper, as in `2024-T3`, makes no difference. */
export const density = lookUp(densities, {
	name: 'density',
	column: 'density',
	shown: 'density',
	words: { above: 'the density of another alloy', below: 'the density of another alloy' }
});
