import { number } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byAngle } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';

/** For 1° to 179°; most values are cut off, not rounded. At 180° there is none. */
const printed: readonly number[] = [
	0.0087, 0.0174, 0.0261, 0.0349, 0.0436, 0.0524, 0.0611, 0.0699, 0.0787, 0.0874, 0.0963, 0.1051,
	0.1139, 0.1228, 0.1316, 0.1405, 0.1494, 0.1583, 0.1673, 0.1763, 0.1853, 0.1943, 0.2034, 0.2125,
	0.2216, 0.2308, 0.24, 0.2493, 0.2586, 0.2679, 0.2773, 0.2867, 0.2962, 0.3057, 0.3153, 0.3249,
	0.3346, 0.3443, 0.3541, 0.3639, 0.3738, 0.3838, 0.3939, 0.404, 0.4142, 0.4244, 0.4348, 0.4452,
	0.4557, 0.4663, 0.4769, 0.4877, 0.4985, 0.5095, 0.5205, 0.5317, 0.5429, 0.5543, 0.5657, 0.5773,
	0.589, 0.6008, 0.6128, 0.6248, 0.637, 0.6494, 0.6618, 0.6745, 0.6872, 0.7002, 0.7132, 0.7265,
	0.7399, 0.7535, 0.7673, 0.7812, 0.7954, 0.8097, 0.8243, 0.8391, 0.854, 0.8692, 0.8847, 0.9004,
	0.9163, 0.9324, 0.9489, 0.9656, 0.9827, 1.0, 1.017, 1.035, 1.053, 1.072, 1.091, 1.11, 1.13, 1.15,
	1.17, 1.191, 1.213, 1.234, 1.257, 1.279, 1.303, 1.327, 1.351, 1.376, 1.401, 1.428, 1.455, 1.482,
	1.51, 1.539, 1.569, 1.6, 1.631, 1.664, 1.697, 1.732, 1.767, 1.804, 1.841, 1.88, 1.921, 1.962,
	2.005, 2.05, 2.096, 2.144, 2.194, 2.246, 2.299, 2.355, 2.414, 2.475, 2.538, 2.605, 2.674, 2.747,
	2.823, 2.904, 2.988, 3.077, 3.171, 3.27, 3.375, 3.487, 3.605, 3.732, 3.866, 4.01, 4.165, 4.331,
	4.51, 4.704, 4.915, 5.144, 5.399, 5.671, 5.975, 6.313, 6.691, 7.115, 7.595, 8.144, 8.776, 9.514,
	10.38, 11.43, 12.7, 14.3, 16.35, 19.08, 22.9, 26.63, 38.18, 57.29, 114.59
];

/** The chart keeps four figures. */
function fourFigures(k: number): string {
	return k.toFixed(k < 1 ? 4 : k < 10 ? 3 : 2);
}

/** K for setback by whole degrees of bend. */
export const kChart = table({
	id: 'k-chart',
	title: 'K for setback',
	topic: 'bends',
	called: 'the K chart',
	source: source('airframe', 'ch. 4, p. 4-60, Fig. 4-122; the same in AC 43.13-1B, Table 4-7'),
	rows: byAngle(
		'Bend angle',
		printed.map((_, i) => i + 1)
	),
	...measures({ k: measure('K', holding(number, fourFigures)) }),
	cells: printed.map((k) => [k]),
	suspect: [
		{ row: 159, column: 'k', why: 'the tangent of 79.5° is 5.3955' },
		{ row: 176, column: 'k', why: 'the tangent of 88° is 28.636' }
	]
});

/** K as the chart prints it for a whole number of degrees of bend; `setbackK` works it out. */
export const chartK = lookUp(kChart, {
	name: 'chartK',
	column: 'k',
	shown: 'K chart',
	words: { above: 'K for one degree less', below: 'K for one degree more' }
});
