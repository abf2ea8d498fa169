import { randomFrom } from '../engine/families/random.ts';
import { kindAt } from '../engine/solver/kind-at.ts';
import { toleranceAt } from '../engine/solver/tolerance.ts';
import type { MarkedHandIn, TaskMark } from '../engine/sets/collect.ts';
import type { AnswerMark } from '../engine/sets/mark-answer.ts';
import type { OpenSet, SetTask } from '../engine/sets/open-set.ts';
import type { Task } from '../engine/tasks/task.ts';

/*
 * Hand-ins as statements of the Experience API, version 1.0.3. Students are accounts by their code:
 * a code behind a hash would be found by trying all of them.
 */

/** Where the codes of the class are known: an address of the school, or one that leads nowhere. */
const nowhere = 'https://class.invalid/';

const verbs = {
	answered: { id: 'http://adlnet.gov/expapi/verbs/answered', display: { en: 'answered' } },
	completed: { id: 'http://adlnet.gov/expapi/verbs/completed', display: { en: 'completed' } }
} as const;

const interaction = 'http://adlnet.gov/expapi/activities/cmi.interaction';
const assessment = 'http://adlnet.gov/expapi/activities/assessment';

interface XapiOptions {
	/** Date and time, for hand-ins that do not tell theirs: `2026-12-04T16:00:00.000Z`. */
	readonly now: string;
	/** Address under which the codes of the class are known. */
	readonly homePage?: string;
}

export interface Statement {
	readonly id: string;
	readonly actor: { readonly account: { readonly homePage: string; readonly name: string } };
	readonly verb: { readonly id: string; readonly display: Readonly<Record<string, string>> };
	readonly object: { readonly id: string; readonly definition: Readonly<Record<string, unknown>> };
	readonly result: Readonly<Record<string, unknown>>;
	readonly timestamp: string;
}

/**
 * A statement for every answer, and one for the set, of every hand-in. The same hand-in gives the
 * same ids again, so that a store takes none twice.
 */
export function xapiStatements(
	open: OpenSet,
	handIns: readonly MarkedHandIn[],
	{ now, homePage = nowhere }: XapiOptions
): Statement[] {
	return handIns.flatMap((handIn) => {
		const own = new Map(open.for(handIn.code).map((one) => [one.place, one]));
		const place = `${homePage}set/${open.hash}`;
		const common = (about: string) => ({
			id: uuid(`${open.hash} ${handIn.code} ${handIn.version} ${about}`),
			actor: { account: { homePage, name: handIn.code } },
			timestamp: handIn.at ?? now
		});
		const answers = handIn.tasks.flatMap((mark) => {
			const task = own.get(mark.place);
			if (!task) return [];
			return mark.answers
				.filter(({ verdict }) => verdict !== 'blank')
				.map((answer) => ({
					...common(`${mark.place} ${answer.key}`),
					verb: verbs.answered,
					object: {
						id: `${place}/task/${mark.task}/${answer.key}`,
						definition: definitionOf(task, answer)
					},
					result: resultOf(mark, answer)
				}));
		});
		const whole = {
			...common('set'),
			verb: verbs.completed,
			object: { id: place, definition: { type: assessment, name: { en: open.set.title } } },
			result: { completion: true, score: scoreOf(handIn.marks, handIn.of) }
		};
		return [...answers, whole];
	});
}

/** The same as the text of a file. */
export function writeXapi(...of: Parameters<typeof xapiStatements>): string {
	return `${JSON.stringify(xapiStatements(...of), null, '\t')}\n`;
}

function definitionOf({ task, question }: SetTask, { key }: AnswerMark) {
	const { method, drawn } = task;
	const label = method.steps[key]?.label ?? key;
	return {
		type: interaction,
		name: { en: label },
		description: { en: drawn.question },
		...(question ? { interactionType: 'other' } : correct(task, key))
	};
}

/** A number within its tolerance, or the very words; of a list nothing is said. */
function correct(task: Task, key: string) {
	const right = task.right[key];
	if (typeof right === 'number') {
		const room = toleranceAt(task.method, key).valueOf();
		const [low, high] = [right - room, right + room].map((edge) => Number(edge.toFixed(9)));
		return { interactionType: 'numeric', correctResponsesPattern: [`${low}[:]${high}`] };
	}
	if (typeof right !== 'string') return { interactionType: 'other' };
	const { choices } = kindAt(task.method, key);
	if (choices.length === 0) {
		return { interactionType: 'fill-in', correctResponsesPattern: [right] };
	}
	return {
		interactionType: 'choice',
		correctResponsesPattern: [choiceId(right)],
		choices: choices.map((one) => ({ id: choiceId(one), description: { en: one } }))
	};
}

/** An id without what parts the members of a pattern. */
function choiceId(words: string): string {
	return words.replace(/[^\w.-]/g, '_');
}

function resultOf({ seconds, answers }: TaskMark, { entry, marks, of, verdict }: AnswerMark) {
	return {
		response: entry,
		success: verdict === 'right' || verdict === 'carried',
		score: scoreOf(marks, of),
		// The time of a task is that of all its answers.
		...(seconds === null || answers.length > 1 ? {} : { duration: `PT${seconds}S` })
	};
}

function scoreOf(raw: number, max: number) {
	return { scaled: max === 0 ? 0 : raw / max, raw, min: 0, max };
}

/** A UUID in the form of version 4 (RFC 9562, 5.4), its chance drawn from a text. */
function uuid(text: string): string {
	const random = randomFrom(`uuid ${text}`);
	const bytes = Array.from({ length: 16 }, () => random.int(0, 255));
	bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
	bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
	const hex = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('');
	return hex.replace(/(.{8})(.{4})(.{4})(.{4})(.{12})/, '$1-$2-$3-$4-$5');
}
