import { optionTexts } from '../../../lib/engine/sets/rehearsal.ts';
import type { SetTask } from '../../../lib/engine/sets/open-set.ts';
import { toleranceWords } from '../../../lib/engine/sets/own-tolerance.ts';
import type { TaskSet } from '../../../lib/engine/sets/set.ts';
import type { Options } from '../../options.ts';
import type { Answer } from '../../run.ts';
import { told } from '../task.ts';
import { codeIn, setIn } from './link.ts';

export async function showSet(args: readonly string[], options: Options): Promise<Answer> {
	const { open, link } = await setIn(args);
	const { set, hash, of } = open;
	const typed = options.value('--code');
	const code = typed === undefined ? null : codeIn(typed);
	const tasks = code === null ? open.tasks : open.for(code);
	const each = tasks.map((one, i) => taskIn(one, i + 1, options.has('--answers')));
	const { title, due, help, order, numbers, answers, within, tolerance, note } = set;
	const terms = { due, help, order, numbers, answers, within, tolerance, note };
	return {
		data: {
			title,
			hash,
			link,
			...(code === null ? {} : { code }),
			marks: of,
			...terms,
			tasks: each.map(({ data }) => data)
		},
		text: [
			`${title}  ${hash}  ${tasks.length} tasks, ${of} marks${code === null ? '' : `, for ${code}`}`,
			...termLines(set),
			...each.map(({ text }) => `\n${text}`)
		].join('\n')
	};
}

function taskIn({ task, marks, question }: SetTask, place: number, answers: boolean): Answer {
	const { data, text } = told(task, answers);
	const choices = question && { key: question.key, options: optionTexts(question, 'in') };
	const letters = choices?.options.map((one, i) => `${String.fromCharCode(65 + i)}: ${one}`);
	return {
		data: { place, marks, ...(choices ? { choose: choices } : {}), ...data },
		text: [`${place}. ${text}`, ...(letters ? [`Choose ${letters.join('; ')}`] : [])].join('\n')
	};
}

function termLines({ due, help, note, ...set }: TaskSet): string[] {
	return [
		...(due === null ? [] : [`Due ${due.replace('T', ', ')}.`]),
		help ? 'Steps and working may be opened.' : 'To be worked without help.',
		...(toleranceWords(set) === '' ? [] : [toleranceWords(set)]),
		...(note === '' ? [] : [note])
	];
}
