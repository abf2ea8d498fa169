import { drill, rivetDiameter } from '../../quantity/kinds.ts';
import { drillSize } from '../../quantity/drills.ts';
import { source } from '../source.ts';
import { byLength } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { asNumber } from '../table/writing.ts';

const inDrills = holding<number>(drill, (size) => drill.write(size));

/** Rivet diameter, pilot (printed as the nominal rivet size) and name of the final drill. */
const printed = [
	[3 / 32, 3 / 32, 'No. 40'],
	[1 / 8, 1 / 8, 'No. 30'],
	[5 / 32, 5 / 32, 'No. 21'],
	[3 / 16, 3 / 16, 'No. 11'],
	[1 / 4, 1 / 4, 'F']
] as const;

/** Pilot and final drill for solid rivets. */
export const rivetDrills = table({
	id: 'rivet-drills',
	title: 'Drills for solid rivets',
	topic: 'holes',
	called: 'the drill figure',
	source: source('airframe', 'ch. 4, p. 4-39, Fig. 4-90'),
	rows: byLength(
		'Rivet',
		printed.map(([rivet]) => rivet),
		{ write: asNumber(rivetDiameter) }
	),
	...measures({
		pilot: measure('Pilot drill', inDrills),
		final: measure('Final drill', inDrills)
	}),
	cells: printed.map(([, pilot, final]) => [pilot, Number(drillSize(final))]),
	stepped: true
});

export const pilotDrill = lookUp(rivetDrills, {
	name: 'pilotDrill',
	column: 'pilot',
	shown: 'pilot for',
	words: {
		above: 'the pilot of the next smaller rivet',
		below: 'the pilot of the next larger rivet'
	}
});

export const finalDrill = lookUp(rivetDrills, {
	name: 'finalDrill',
	column: 'final',
	shown: 'final for',
	words: {
		above: 'the final drill of the next smaller rivet',
		below: 'the final drill of the next larger rivet'
	}
});
