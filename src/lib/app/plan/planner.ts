import { cardByCode } from '$lib/engine/families/catalogue.ts';
import type { Family } from '$lib/engine/families/family.ts';
import { drawTask } from '$lib/engine/tasks/task.ts';
import type { Level } from '$lib/engine/families/level.ts';
import { readTaskNumber, seedCount } from '$lib/engine/tasks/task-number.ts';
import { courseOf, type CourseSettings } from '$lib/engine/schedule/course-settings.ts';
import { type Forecast, forecast } from '$lib/engine/schedule/forecast.ts';
import { givensOf, numbersIn } from '$lib/engine/tasks/givens.ts';
import { type Learning, pace } from '$lib/engine/schedule/learning.ts';
import { itemsOf, type PlanInput, planRun } from '$lib/engine/schedule/plan.ts';
import { emptyMemory, isMet } from '$lib/engine/schedule/memory.ts';
import { mapPractice, type PracticeMap } from '$lib/engine/schedule/practice.ts';
import { afterMiss, type Run as EngineRun, type RunItem } from '$lib/engine/schedule/run.ts';
import type { SkillId, Syllabus, TaskKind } from '$lib/engine/schedule/skill.ts';
import { goneSlipSays } from '$lib/engine/schedule/old-skills.ts';
import { skillWords } from '$lib/engine/schedule/skill-words.ts';
import { wholeSyllabus } from '$lib/engine/schedule/whole-syllabus.ts';
import { sayReason } from '$lib/ui/reason.ts';
import { familiesInTurn } from './families-in-turn.ts';
import { type Below, numberOf, type Planned, type Run, type RunTask } from '../practice/run.ts';

/*
 * The plan for the learner at work, joined to the tasks that are drawn for it. Loads every family,
 * so it is itself loaded on demand.
 */

/** What is known of the learner when a plan is made. */
export interface Known {
	readonly learning: Learning;
	readonly settings: CourseSettings;
	/** Today, as the scheduler counts days. */
	readonly day: number;
}

/** A task that was missed. */
export interface Miss {
	/** Its place in the run. */
	readonly index: number;
	/** The skill the slip sits in, where it is known. */
	readonly skill: SkillId | undefined;
}

export interface Planner {
	readonly families: readonly Family[];
	readonly syllabus: Syllabus;
	/** The plan's items for today, less what was done already. */
	today(known: Known): EngineRun;
	/** A run of tasks from planned items, with numbers that are neither in the log nor in `before`. */
	run(planned: EngineRun, known: Known, id: string, below: Below, before?: Run | null): Run;
	/** Tasks by free choice, and a worked one before each in which a step is met for the first time. */
	withWorked(tasks: readonly RunTask[], known: Known, below: Below): RunTask[];
	forecast(known: Known): Forecast;
	/** The same, with today's work counted as done: what it says of tomorrow is tomorrow's run. */
	forecastOfRest(known: Known): Forecast;
	/** The run with the return of a missed task in it: in place, or else at the end. */
	missed(run: Run, known: Known, miss: Miss, below: Below): Run;
	/** Number of a fresh task of a skill, of the easiest kind; null when no kind exercises it. */
	taskFor(skill: SkillId, known: Known, below: Below): string | null;
	/** Why the plan chose a task, in one to three sentences. */
	why(planned: Pick<Planned, 'reason' | 'worked'>, learning: Learning | null, day: number): string;
	/** Label of a skill, as on a worked step. */
	label(skill: SkillId): string;
	/** The sentence of a slip in a skill. */
	slipSays(skill: SkillId, slip: string): string;
}

export async function loadPlanner(): Promise<Planner> {
	const [families, syllabus] = await Promise.all([familiesInTurn(), wholeSyllabus()]);
	const map = mapPractice(syllabus);
	const words = skillWords(families.flatMap(({ method, others = [] }) => [method, ...others]));
	const label = (skill: SkillId) => words.get(skill)?.label ?? skill.split('/').at(-1) ?? '';
	const slipSays = (skill: SkillId, slip: string) =>
		words.get(skill)?.slips.get(slip) ?? goneSlipSays(skill, slip);
	return {
		families,
		syllabus,
		today: (known) => planRun(inputOf(known, syllabus), map),
		forecast: (known) => forecast(inputOf(known, syllabus)),
		forecastOfRest: (known) => forecast({ ...inputOf(known, syllabus), spent: Infinity }),
		run: (planned, known, id, below, before = null) =>
			runOf(planned, staleBefore(known, before?.tasks ?? [], families), id, below, families),
		withWorked: (tasks, known, below) => withWorked(tasks, known, below, map, syllabus, families),
		missed: (run, known, miss, below) => afterMissed(run, known, miss, below, map, families),
		taskFor: (skill, { learning }, below) => {
			const kind = map.practices.find((practice) => practice.skill === skill)?.kind;
			return kind ? freshNumber(kind.id, new Set(learning.givens), below, families) : null;
		},
		why: (planned, learning, day) => {
			const { skill } = planned.reason;
			const slip = learning?.slips[skill]?.slip;
			return sayReason(planned, label(skill), slip ? slipSays(skill, slip) : '', day);
		},
		label,
		slipSays
	};
}

function inputOf({ learning, settings, day }: Known, syllabus: Syllabus): PlanInput {
	const seconds = pace(learning);
	return {
		syllabus,
		memories: new Map(Object.entries(learning.memories)),
		course: courseOf(settings),
		pace: { task: seconds, worked: Math.min(60, seconds / 2) },
		day,
		spent: learning.days[day]?.seconds ?? 0
	};
}

function runOf(
	planned: EngineRun,
	stale: Set<string>,
	id: string,
	below: Below,
	families: readonly Family[]
): Run {
	const tasks = planned.items.flatMap((item) => tasksFor(item, stale, below, families));
	const { day, budget } = planned;
	return { id, topic: 'plan', level: 1, at: 0, day, budget, tasks };
}

function tasksFor(
	item: RunItem,
	stale: Set<string>,
	below: Below,
	families: readonly Family[]
): RunTask[] {
	const number = freshNumber(item.kind.id, stale, below, families);
	return workedFirst({ number, standing: 'open' }, item, stale, below, families);
}

/** The task of an item, and before it a worked one where a step in it is met for the first time. */
function workedFirst(
	task: RunTask,
	item: RunItem,
	stale: Set<string>,
	below: Below,
	families: readonly Family[]
): RunTask[] {
	const planned: Planned = { ...item, kind: item.kind.id };
	const own: RunTask = { ...task, planned };
	if (!planned.worked) return [own];
	const shown = freshNumber(planned.kind, stale, below, families);
	return [{ number: shown, standing: 'shown', planned }, own];
}

/** Only what is new is planned among tasks by free choice: of the rest there is nothing to tell. */
function withWorked(
	chosen: readonly RunTask[],
	known: Known,
	below: Below,
	map: PracticeMap,
	syllabus: Syllabus,
	families: readonly Family[]
): RunTask[] {
	const tasks = easyFirst(chosen, known, syllabus);
	const kinds = tasks.map(({ number }) => kindOf(number, syllabus));
	const items = itemsOf(kinds, inputOf(known, syllabus), map);
	// Tasks of another family have other numbers: they need not be drawn to tell.
	const isNew = new Set(items.flatMap((item) => (item?.worked ? item.kind.family : [])));
	const alike = tasks.filter((_, i) => isNew.has(kinds[i]?.family ?? ''));
	const stale = staleBefore(known, alike, families);
	return tasks.flatMap((task, i) => {
		const item = items[i];
		return item?.worked ? workedFirst(task, item, stale, below, families) : [task];
	});
}

/** The kinds of a topic that are new come from easy to hard, in the places that they have. */
function easyFirst(tasks: readonly RunTask[], { learning }: Known, syllabus: Syllabus): RunTask[] {
	const kinds = tasks.map(({ number }) => kindOf(number, syllabus));
	const isNew = (kind: TaskKind, i: number) =>
		kinds.indexOf(kind) === i &&
		kind.skills.some((skill) => !isMet(learning.memories[skill] ?? emptyMemory));
	const fresh = kinds.flatMap((kind, i) => (isNew(kind, i) ? [{ kind, i }] : []));
	const ordered = [...tasks];
	const topicOf = ({ family }: TaskKind) => cardByCode(family)?.topic;
	for (const topic of new Set(kinds.map(topicOf))) {
		const places = fresh.filter(({ kind }) => topicOf(kind) === topic);
		const rank = (one: (typeof fresh)[number]) => syllabus.kinds.indexOf(one.kind);
		const sorted = places.toSorted((one, other) => rank(one) - rank(other));
		places.forEach(({ i }, n) => {
			const task = tasks[sorted[n]?.i ?? i];
			if (task) ordered[i] = task;
		});
	}
	return ordered;
}

function kindOf(number: string, { kinds }: Syllabus): TaskKind {
	const { code, level } = readTaskNumber(number);
	const found = kinds.find(({ id }) => id === `${code}${level}`);
	if (!found) throw new Error(`unknown kind of task: ${number}`);
	return found;
}

const tries = 60;

/**
 * A task of the kind whose numbers are not among the stale ones, which it then joins. Some kinds
 * have few numbers: the other levels of the family are tried before any are repeated, and then
 * numbers are repeated with another question before the question is repeated too.
 */
export function freshNumber(
	kindId: string,
	stale: Set<string>,
	below: Below,
	families: readonly Family[]
): string {
	const code = kindId.slice(0, 2);
	const own = Number(kindId[2]) as Level;
	const card = cardByCode(code);
	const family = families.find((one) => one.code === code);
	if (!card || !family) throw new Error(`unknown kind of task: ${kindId}`);
	const search = (isFresh: (givens: string) => boolean) => {
		for (const level of [own, ...([3, 2, 1] as const).filter((other) => other !== own)]) {
			for (let n = 0; n < tries; n++) {
				const seed = below(seedCount);
				const givens = givensOf(drawTask(family, level, seed));
				if (isFresh(givens)) return { number: numberOf(card, level, seed), givens };
			}
		}
		return null;
	};
	const staleNumbers = new Set([...stale].map(numbersIn));
	const found =
		search((givens) => !staleNumbers.has(numbersIn(givens))) ??
		search((givens) => !stale.has(givens));
	if (found) stale.add(found.givens);
	return found?.number ?? numberOf(card, own, below(seedCount));
}

/** The run with the missed task's return in it: in its place by the plan, or else at the end. */
function afterMissed(
	run: Run,
	known: Known,
	{ index, skill }: Miss,
	below: Below,
	map: PracticeMap,
	families: readonly Family[]
): Run {
	const missed = run.tasks[index];
	if (!missed?.planned || missed.planned.returned) return run;
	const stale = staleBefore(known, run.tasks, families);
	const aim = skill ?? missed.planned.skill;
	const back: RunTask = {
		number: freshNumber(missed.planned.kind, stale, below, families),
		standing: 'open',
		planned: {
			...missed.planned,
			skill: aim,
			reason: { kind: 'missed', skill: aim, day: run.day },
			worked: false,
			reading: 0,
			returned: true
		}
	};
	// Whoever has gone on already finds it at the end.
	const tasks = run.at === index ? withReturn(run, missed, back, map) : [...run.tasks, back];
	return { ...run, tasks };
}

/**
 * The plan knows its own tasks only; what was opened by hand in between stays where it is. A task
 * that makes room goes with its worked example, and the return does not part the two.
 */
function withReturn(run: Run, missed: RunTask, back: RunTask, map: PracticeMap): RunTask[] {
	const items = run.tasks.map((task) => (task.standing === 'shown' ? null : itemOf(task, map)));
	const before = items.filter((item) => item !== null);
	const missedItem = items[run.tasks.indexOf(missed)];
	const place = missedItem ? before.indexOf(missedItem) : -1;
	const plan: EngineRun = { day: run.day, budget: run.budget, items: before };
	const after = afterMiss(plan, place, back.planned?.skill).items;
	const at = after.findIndex((item) => !before.includes(item));
	if (at < 0) return [...run.tasks, back];
	const tasks = run.tasks.flatMap((task, i) => {
		const item = task.standing === 'shown' ? items[i + 1] : items[i];
		const isFirst = task.standing === 'shown' || run.tasks[i - 1]?.standing !== 'shown';
		if (item && !after.includes(item)) return [];
		return item && item === after[at + 1] && isFirst ? [back, task] : [task];
	});
	return tasks.includes(back) ? tasks : [...tasks, back];
}

/** Numbers not to draw again: the newest in the log, and those of a run, worked examples too. */
function staleBefore(
	known: Known,
	tasks: readonly RunTask[],
	families: readonly Family[]
): Set<string> {
	return new Set([...known.learning.givens, ...tasks.map((one) => givensIn(one, families))]);
}

/** The numbers of a task that is already in the run. */
function givensIn({ number }: RunTask, families: readonly Family[]): string {
	const { code, level, seed } = readTaskNumber(number);
	const family = families.find((one) => one.code === code);
	return family ? givensOf(drawTask(family, level, seed)) : number;
}

function itemOf({ planned }: RunTask, { practices }: PracticeMap): RunItem | null {
	const kind = practices.find((practice) => practice.kind.id === planned?.kind)?.kind;
	return planned && kind ? { ...planned, kind } : null;
}
