import { inBothUnits } from '../quantity/both-units.ts';
import type { LengthUnit } from '../quantity/value.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Task } from './task.ts';

/** The givens of a task as they are told: label and value, a list one row a member. */
export function givenRows(task: Task, units: LengthUnit): (readonly [string, string])[] {
	const { method } = task;
	const { given, labels = {}, told = [] } = task.drawn;
	const rows = Object.entries(given).flatMap(([key, value]): (readonly [string, string])[] => {
		const label = labels[key] ?? method.given[key]?.label ?? key;
		const kind = kindAt(method, key);
		if (!kind.isList) return [[String(label), kind.write(value, units)]];
		return kind
			.members(value)
			.map((one, i) => [
				typeof label === 'string' ? `${label} ${i + 1}` : (label[i] ?? ''),
				kind.member.write(one, units)
			]);
	});
	return [
		...rows,
		...told.map(([label, text]) => [label, unbroken(inBothUnits(text, units))] as const)
	];
}

/** An angle and what a chart has for it stay on one line. */
function unbroken(text: string): string {
	return text.replaceAll('° ', '°\u00a0');
}
