import type { MissedStep } from '../engine/sets/missed-steps.ts';
import type { MarkedHandIn } from '../engine/sets/collect.ts';
import type { OpenSet } from '../engine/sets/open-set.ts';
import type { Cell } from './csv.ts';

/** A row a student: marks of every task, and all together. */
export function gradebook(
	{ tasks, set, hash }: OpenSet,
	handIns: readonly MarkedHandIn[]
): Cell[][] {
	const header = [
		'Code',
		'Name',
		...tasks.map(({ place, task }) => `Task ${place}: ${task.family.name}`),
		'Marks',
		'Of',
		'Version',
		'Handed in',
		'Changed by hand',
		'Set'
	];
	const rows = handIns.map((one): Cell[] => [
		one.code,
		one.name,
		...one.tasks.map(({ marks }) => marks),
		one.marks,
		one.of,
		one.version,
		one.at,
		one.tasks
			.flatMap(({ place, changed }) => (changed ? `Task ${place}: ${changed.note}` : []))
			.join(' '),
		`${set.title} ${hash}`
	]);
	return [header, ...rows];
}

/** A row a slip: the step it sits in, and how many students made it. */
export function slipTable(missed: readonly MissedStep[], students: number): Cell[][] {
	const header = ['Step', 'Tasks', 'Slip', 'Students', 'Of', 'Codes'];
	const rows = missed.flatMap(({ label, places, slips }) =>
		slips.map(({ says, codes }): Cell[] => [
			label,
			places.join(' '),
			says,
			codes.length,
			students,
			codes.join(' ')
		])
	);
	return [header, ...rows];
}
