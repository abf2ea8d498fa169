import * as v from 'valibot';
import { loadReader } from '../../../lib/engine/quantity/reader.ts';
import {
	type HandIn,
	type HandInAnswer,
	longestEntry,
	longestName,
	noAnswer
} from '../../../lib/engine/sets/hand-in.ts';
import { optionChosen, optionEntry } from '../../../lib/engine/sets/chosen-option.ts';
import { markAnswer } from '../../../lib/engine/sets/mark-answer.ts';
import type { SetTask } from '../../../lib/engine/sets/open-set.ts';
import { stepsOf } from '../../../lib/engine/tasks/task.ts';
import { writeHandInFile, writeHandInText } from '../../../lib/exchange/hand-in-file.ts';
import { writeSet } from '../../../lib/exchange/set-link.ts';
import { readJson, write } from '../../files.ts';
import type { Options } from '../../options.ts';
import type { Answer } from '../../run.ts';
import { echoed, UsageError } from '../../usage-error.ts';
import { codeIn, setIn } from './link.ts';

/** Not a list: a record of the library takes one, as if it had no entries. */
const keyed = v.custom<object>((data) => typeof data === 'object' && !Array.isArray(data));

const answersSchema = v.pipe(
	keyed,
	v.record(
		v.pipe(v.string(), v.regex(/^[1-9]\d?$/)),
		v.pipe(keyed, v.record(v.string(), v.pipe(v.string(), v.maxLength(longestEntry))))
	)
);

export async function handInSet(args: readonly string[], options: Options): Promise<Answer> {
	const { open } = await setIn(args);
	const code = codeIn(needed(options, '--code'));
	const out = needed(options, '--out');
	const [units, version] = [unitsIn(options), versionIn(options)];
	const typed = v.safeParse(answersSchema, await readJson(needed(options, '--answers')));
	if (!typed.success) {
		throw new UsageError('Write the answers as {"1": {"length": "5/16"}}, by place in the set.');
	}
	await loadReader();
	const tasks = open.for(code);
	const answers: HandInAnswer[] = [];
	const unread: { place: number; key: string; why: string }[] = [];
	for (const [at, entries] of Object.entries(typed.output)) {
		const place = Number(at);
		const own = tasks[place - 1];
		if (!own)
			throw new UsageError(`The answers have a task ${place}; the set has ${tasks.length}.`);
		const answer = { ...answerTo(own, place, entries), units };
		answers.push(answer);
		for (const { key, verdict, says } of await markAnswer(own, answer)) {
			if (verdict === 'unread') unread.push({ place, key, why: says });
		}
	}
	const handIn: HandIn = {
		set: await writeSet(open.set),
		hash: open.hash,
		code,
		name: (options.value('--name') ?? '').slice(0, longestName),
		version,
		promised: options.has('--promised'),
		at: null,
		answers: answers.sort((a, b) => a.place - b.place)
	};
	await write(out, writeHandInFile(handIn));
	const text = await writeHandInText(handIn);
	const answered = answers.filter(isAnswered).length;
	return {
		data: { code, hash: open.hash, version, file: out, text, answered, unread },
		text: [
			`${code}: ${answered} of ${tasks.length} tasks answered, in ${out}`,
			...unread.map(({ place, key, why }) => `Task ${place}, ${key}, cannot be read: ${why}`),
			...(text === null ? [] : ['To paste into a message:', text])
		].join('\n')
	};
}

function isAnswered({ entries }: HandInAnswer): boolean {
	return Object.values(entries).some((text) => text.trim() !== '');
}

/** @throws UsageError */
function needed(options: Options, name: string): string {
	const value = options.value(name);
	if (value === undefined) throw new UsageError(`Give ${name} as well; try bucktail help.`);
	return value;
}

function answerTo(
	{ task, question }: SetTask,
	place: number,
	typed: Readonly<Record<string, string>>
): HandInAnswer {
	const steps = question ? [question.key] : stepsOf(task);
	const stray = Object.keys(typed).find((key) => !steps.includes(key));
	if (stray !== undefined) {
		const asked = question ? question.key : task.drawn.asked.join(', ');
		throw new UsageError(`Task ${place} has no step ${echoed(stray)}; it asks ${asked}.`);
	}
	const entries = Object.fromEntries(
		Object.entries(typed).map(([key, text]) => {
			const chosen = question && optionChosen(question, text);
			return [key, question && chosen !== null ? optionEntry(question, chosen ?? 0) : text];
		})
	);
	return { ...noAnswer(place), entries };
}

function unitsIn(options: Options): 'in' | 'mm' {
	const units = options.value('--units') ?? 'in';
	if (units === 'in' || units === 'mm') return units;
	throw new UsageError('Give --units as in or mm.');
}

function versionIn(options: Options): number {
	const version = Number(options.value('--version') ?? '1');
	if (Number.isInteger(version) && version >= 1 && version <= 9999) return version;
	throw new UsageError('Give --version as a whole number from 1: one more every time again.');
}
