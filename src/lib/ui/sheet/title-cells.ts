import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Task } from '$lib/engine/tasks/task.ts';

/** Name and value of the cells of a title block. */
export type Cells = readonly (readonly [name: string, value: string])[];

export function unitsCell(units: LengthUnit): Cells[number] {
	return ['UNITS', units === 'in' ? 'INCH' : 'MM'];
}

/** The title block of a sheet with one task on it. */
export function taskCells({ number, id }: Task, units: LengthUnit, drawnFor: string): Cells {
	return [
		['TASK', number],
		['LEVEL', `${id.level} of 3`],
		unitsCell(units),
		['REV', String(id.rev)],
		['DRAWN FOR', drawnFor]
	];
}
