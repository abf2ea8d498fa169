import { cellAt, suspectAt } from '../../../trade/table/reading.ts';
import { kChart } from '../../../trade/tables/k-chart.ts';

/** A row that a task tells beside its givens: label and text. */
type Told = readonly [string, string];

/** Annealed 2024 is bent easily, and is no material for a finished part until it is heat treated. */
export function material(alloy: string): Told {
	return ['Material', alloy === '2024-O' ? '2024-O, heat treated after bending' : alloy];
}

/** The angle that a drawing often shows beside the bend angle: from leg to leg. */
export function betweenLegs(angle: number): Told {
	return ['Angle between the legs', `${180 - angle}°`];
}

/**
 * The K chart around a bend angle and around the angle between its legs, so that it does not tell
 * which of the two is wanted.
 *
 * @param angle whole degrees
 */
export function kRows(angle: number): Told {
	const degrees = [angle, 180 - angle].flatMap((one) => [one - 1, one, one + 1]);
	const inOrder = [...new Set(degrees)].sort((one, other) => one - other);
	const rows = inOrder
		.map((one) => [one, one - 1] as const)
		.filter(([, row]) => row >= 0 && row < kChart.rows.keys.length && !suspectAt(kChart, row, 0));
	return [
		'K chart',
		rows.map(([one, row]) => `${one}° ${kChart.holds[0]?.write(cellAt(kChart, row, 0))}`).join(', ')
	];
}
