import { type TopicId, topicIds } from '../families/topics.ts';
import type { Verdict } from '../marking/verdict.ts';
import { evidenceOf, type SkillEvidence } from '../schedule/evidence.ts';
import type { Question } from './rehearsal.ts';

/** The place of the option that was chosen; null where there is no answer. */
export type Choice = number | null;

/** The verdict on the option at a place. */
export function verdictOn({ options }: Question, chosen: number): Verdict {
	const option = options[chosen];
	if (!option) throw new Error(`no such option: ${chosen}`);
	const { cause } = option;
	return cause ? { kind: 'rework', cause } : { kind: 'accept', carried: false };
}

/** What the choice shows, skill by skill; no answer shows nothing. */
export function evidenceIn(question: Question, chosen: Choice): SkillEvidence[] {
	if (chosen === null) return [];
	const verdicts = { [question.key]: verdictOn(question, chosen) };
	return evidenceOf(question.task, { verdicts, opened: [], byStep: false, charged: [] });
}

/** How one question came out; `open` where there is no answer. */
export type Mark = 'right' | 'wrong' | 'open';

export function markOf({ right }: Question, chosen: Choice): Mark {
	if (chosen === null) return 'open';
	return chosen === right ? 'right' : 'wrong';
}

/** How many of the questions were right. */
export interface Score {
	readonly right: number;
	readonly of: number;
}

export interface TopicScore extends Score {
	readonly topic: TopicId;
}

/** What a rehearsal came to, all in all and by topic in the order of the catalogue. */
export interface Result {
	readonly marks: readonly Mark[];
	readonly all: Score;
	readonly topics: readonly TopicScore[];
}

export function resultOf(questions: readonly Question[], choices: readonly Choice[]): Result {
	const marks = questions.map((question, i) => markOf(question, choices[i] ?? null));
	const topicAt = questions.map(({ task }) => task.family.topic);
	const topics = topicIds.filter((topic) => topicAt.includes(topic));
	return {
		marks,
		all: scoreOf(marks),
		topics: topics.map((topic) => ({
			topic,
			...scoreOf(marks.filter((_, i) => topicAt[i] === topic))
		}))
	};
}

function scoreOf(marks: readonly Mark[]): Score {
	return { right: marks.filter((mark) => mark === 'right').length, of: marks.length };
}
