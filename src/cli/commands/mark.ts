import { type Task, taskFromNumber } from '../../lib/engine/tasks/task.ts';
import { readWorked } from '../../lib/engine/marking/entries.ts';
import { entryOf } from '../../lib/engine/marking/answer.ts';
import { mark } from '../../lib/engine/marking/mark.ts';
import type { Reading } from '../../lib/engine/quantity/read.ts';
import { sayVerdict } from '../../lib/engine/marking/say.ts';
import type { Entry, Verdict } from '../../lib/engine/marking/verdict.ts';
import type { Answer } from '../run.ts';
import { echoed, UsageError } from '../usage-error.ts';
import { columns } from './columns.ts';
import { pairs } from './pairs.ts';

interface Marked {
	readonly key: string;
	readonly entry: string;
	readonly read: string;
	readonly verdict: Verdict;
	readonly says: string;
}

interface Typed {
	readonly key: string;
	readonly entry: string;
	readonly read: string;
	readonly value: Entry;
}

export async function markTask(args: readonly string[]): Promise<Answer> {
	const [number, ...rest] = args;
	if (number === undefined) throw new UsageError('Give a task number and answers as key=entry.');
	const task = await taskFromNumber(number);
	const given = pairs(rest);
	if (Object.keys(given).length === 0) {
		throw new UsageError(
			`Give an answer as key=entry; this task asks ${task.drawn.asked.join(', ')}.`
		);
	}
	const typed: Typed[] = [];
	for (const [key, entry] of Object.entries(given)) typed.push(await readOne(task, key, entry));
	const verdicts = mark(task, Object.fromEntries(typed.map(({ key, value }) => [key, value])));
	const answers = typed.map(({ key, entry, read }) => {
		const verdict = verdicts[key];
		if (!verdict) throw new Error(`not marked: ${key}`);
		return answerOf({ key, entry, read, verdict, says: sayVerdict(task, verdict, key) });
	});
	const accepted =
		answers.every((one) => one.verdict === 'accept') &&
		task.drawn.asked.every((key) => Object.hasOwn(given, key));
	return {
		data: { task: task.number, accepted, answers },
		text: columns(answers.map((one) => [one.key, one.verdict.toUpperCase(), one.read, one.says]))
	};
}

/** A marked answer as it is printed. */
export function answerOf({ key, entry, read, verdict, says }: Marked) {
	return {
		key,
		entry,
		read,
		verdict: verdict.kind,
		...(verdict.kind === 'accept' && { carried: verdict.carried }),
		...(verdict.kind === 'rework' && { cause: verdict.cause }),
		says
	};
}

async function readOne(task: Task, key: string, entry: string): Promise<Typed> {
	const { method } = task;
	if (!Object.hasOwn(method.steps, key) || !method.steps[key]?.tolerance) {
		throw new UsageError(
			`This task has no step ${echoed(key)}; it asks ${task.drawn.asked.join(', ')}.`
		);
	}
	const reading = await readWorked(method, key, entry, 'in');
	const value = entryOf(reading);
	if (value && reading.state === 'read') return { key, entry, read: reading.said, value };
	throw new UsageError(`${key}: ${whyNot(reading)}`);
}

function whyNot(reading: Reading): string {
	if (reading.state === 'unread') return reading.why;
	if (reading.state === 'which') return reading.question;
	return 'give an answer after the equals sign.';
}
