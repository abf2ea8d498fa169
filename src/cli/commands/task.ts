import { kindAt } from '../../lib/engine/solver/kind-at.ts';
import { topics } from '../../lib/engine/families/topics.ts';
import { givenRows } from '../../lib/engine/tasks/given-rows.ts';
import { type Task, taskFromNumber } from '../../lib/engine/tasks/task.ts';
import { cautions, trainingAid } from '../../lib/engine/trade/cautions.ts';
import type { Options } from '../options.ts';
import type { Answer } from '../run.ts';
import { UsageError } from '../usage-error.ts';
import { textAt } from '../../lib/engine/solver/show.ts';
import { chartLines } from './chart-lines.ts';
import { columns } from './columns.ts';
import { plainGivens, stepAnswers, stepRows } from './steps.ts';

export async function showTask(args: readonly string[], options: Options): Promise<Answer> {
	const [number, more] = args;
	if (number === undefined || more !== undefined) {
		throw new UsageError('Give one task number, such as RL2-7Q4K-21.');
	}
	return told(await taskFromNumber(number), options.has('--answers'));
}

/** A task as it is told, with its working where that is asked for. */
export function told(
	task: Task,
	withAnswers: boolean
): { data: Readonly<Record<string, unknown>>; text: string } {
	const { family, method, drawn, id } = task;
	const rows = givenRows(task, 'in');
	const asked = drawn.asked.map((key) => {
		const { choices } = kindAt(method, key);
		return {
			key,
			label: method.steps[key]?.label ?? key,
			...(choices.length > 0 ? { oneOf: choices } : {})
		};
	});
	const steps = withAnswers ? stepAnswers(method, task.right) : [];
	const data = {
		task: task.number,
		family: family.id,
		topic: family.topic,
		level: id.level,
		rev: id.rev,
		question: drawn.question,
		story: drawn.story,
		...(drawn.basis === undefined ? {} : { basis: drawn.basis }),
		method: method.id,
		given: plainGivens(method, drawn.given),
		...(drawn.told?.length ? { told: Object.fromEntries(drawn.told) } : {}),
		asked,
		cautions: drawn.cautions.map((caution) => cautions[caution]),
		...(steps.length > 0 ? { steps } : {})
	};
	const lines = [
		`${task.number}  ${topics[family.topic]}, ${family.name}, level ${id.level} of 3`,
		drawn.question,
		drawn.story,
		columns(rows.map(([label, value]) => [`  ${label}`, value])),
		...chartLines(family.figure(drawn.given, (key, value) => textAt(method, key, value))),
		...(drawn.basis === undefined ? [] : [drawn.basis]),
		`Asked: ${asked.map(({ key, label, oneOf }) => `${label} (${key}${oneOf ? `: ${oneOf.join(', ')}` : ''})`).join('; ')}`,
		...(steps.length > 0 ? [columns(stepRows(method, steps))] : []),
		`Caution. ${[...data.cautions, trainingAid].join(' ')}`
	];
	return { data, text: lines.join('\n') };
}
