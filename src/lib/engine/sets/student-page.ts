import { ruleById } from '../trade/rules.ts';
import { cite } from '../trade/documents.ts';
import { randomFrom } from '../families/random.ts';
import { skillOf } from '../schedule/syllabus.ts';
import { textAt } from '../solver/show.ts';
import { seedCount } from '../tasks/task-number.ts';
import { drawTask } from '../tasks/task.ts';
import type { MarkedHandIn, TaskMark } from './collect.ts';
import type { AnswerMark } from './mark-answer.ts';
import type { OpenSet, SetTask } from './open-set.ts';

/** An answer that lost marks, for the student who gave it. */
export interface WrongAnswer {
	readonly label: string;
	/** As typed; empty where it was left out. */
	readonly entry: string;
	/** The right one, as it is written. */
	readonly wanted: string;
	/** What was wrong. */
	readonly says: string;
	/**
	 * The rule that the lost step rests on, and where it stands; empty for plain arithmetic, and
	 * where an answer before it has the same.
	 */
	readonly why: string;
	readonly source: string;
	readonly marks: number;
	readonly of: number;
}

/** A task that lost marks. */
export interface TaskBack {
	readonly place: number;
	readonly task: string;
	readonly question: string;
	readonly marks: number;
	readonly of: number;
	/** Why marks were changed by hand; empty where they were not. */
	readonly note: string;
	readonly wrong: readonly WrongAnswer[];
}

/** What to practise: a step, and a task with other numbers that has it. */
export interface Practice {
	readonly label: string;
	readonly task: string;
}

/** What a student gets back. */
export interface StudentPage {
	readonly code: string;
	readonly name: string;
	readonly marks: number;
	readonly of: number;
	readonly tasks: readonly TaskBack[];
	readonly practise: readonly Practice[];
}

/** Most steps named for practice: what was missed in most tasks first. */
const mostPractised = 4;

export function studentPage(open: OpenSet, handIn: MarkedHandIn): StudentPage {
	const own = new Map(open.for(handIn.code).map((one) => [one.place, one]));
	const each = handIn.tasks.flatMap((mark) => {
		const setTask = own.get(mark.place);
		return setTask && (mark.marks < mark.of || mark.changed) ? [{ mark, setTask }] : [];
	});
	const { code, name, marks, of } = handIn;
	const practise = practiceFor(`practise ${open.hash} ${code}`, each);
	return { code, name, marks, of, tasks: eachRuleOnce(each.map(taskBack)), practise };
}

function eachRuleOnce(tasks: readonly TaskBack[]): TaskBack[] {
	const told = new Set<string>();
	return tasks.map((task) => ({
		...task,
		wrong: task.wrong.map((answer) => {
			if (told.has(answer.why)) return { ...answer, why: '', source: '' };
			told.add(answer.why);
			return answer;
		})
	}));
}

interface Lost {
	readonly mark: TaskMark;
	readonly setTask: SetTask;
}

function taskBack({ mark, setTask }: Lost): TaskBack {
	const lost = mark.answers.filter((answer) => answer.marks < answer.of);
	return {
		place: mark.place,
		task: mark.task,
		question: setTask.task.drawn.question,
		marks: mark.marks,
		of: mark.of,
		note: mark.changed?.note ?? '',
		wrong: lost.map((answer) => wrongAnswer(setTask, answer))
	};
}

function wrongAnswer({ task }: SetTask, answer: AnswerMark): WrongAnswer {
	const { method, right } = task;
	const { key, entry, says, marks, of } = answer;
	const rule = ruleAt(method.steps[lostStep(answer)]?.rule ?? null);
	return {
		label: method.steps[key]?.label ?? key,
		entry,
		wanted: textAt(method, key, right[key] ?? ''),
		says,
		why: rule?.says ?? '',
		source: rule?.sources.map(cite).join('; ') ?? '',
		marks,
		of
	};
}

function ruleAt(id: string | null) {
	return id === null ? null : ruleById(id);
}

/** The first step that lost its marks; the answer's own where it was left out. */
function lostStep({ key, steps }: AnswerMark): string {
	return steps.find(({ state }) => state === 'lost')?.key ?? key;
}

/** The steps that lost marks, each once, with a fresh task of a family that has it. */
function practiceFor(seed: string, each: readonly Lost[]): Practice[] {
	const found = new Map<string, { label: string; from: SetTask; times: number }>();
	for (const { mark, setTask } of each) {
		for (const answer of mark.answers.filter((one) => one.marks < one.of)) {
			const step = lostStep(answer);
			const { method } = setTask.task;
			const skill = skillOf(method, step);
			const before = found.get(skill);
			const label = method.steps[step]?.label ?? step;
			found.set(skill, { label, from: setTask, ...before, times: (before?.times ?? 0) + 1 });
		}
	}
	const most = [...found].sort(([, a], [, b]) => b.times - a.times).slice(0, mostPractised);
	return most.map(([skill, { label, from }]) => ({ label, task: freshTask(from, seed + skill) }));
}

/** Number of a task of the same family and level with other numbers. */
function freshTask({ task }: SetTask, seed: string): string {
	const random = randomFrom(seed);
	return drawTask(task.family, task.id.level, random.int(0, seedCount - 1)).number;
}
