import { cardByCode } from '$lib/engine/families/catalogue.ts';
import type { Cause } from '$lib/engine/marking/verdict.ts';
import { evidenceOf, givenUp, type SkillEvidence, toldBy } from '$lib/engine/schedule/evidence.ts';
import { noteVerdicts } from '$lib/engine/schedule/note-verdicts.ts';
import { givensOf } from '$lib/engine/tasks/givens.ts';
import { readTaskNumber } from '$lib/engine/tasks/task-number.ts';
import { painted } from '$lib/ui/sheet/painted.ts';
import type { Check } from '$lib/ui/sheet/task-work.svelte.ts';
import { below } from '../device/chance.ts';
import { type AttemptFacts } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { plan } from '../plan/plan.svelte.ts';
import { longestSeconds, settledIn } from './answering.ts';
import type { AnswerGiven, Practice } from './practice.svelte.ts';
import { newTask, type Run, type RunTask } from './run.ts';

/*
 * What an answer comes to in the run and in the log. Loaded before the first answer is marked.
 */

export async function noteCheck(
	practice: Practice,
	given: AnswerGiven,
	check: Check
): Promise<void> {
	const { work, checks } = given;
	// The stamp first: what the answer comes to in the run and in the log takes as long as painting it.
	await painted();
	const task = placeOf(practice, given)?.task ?? given.task;
	const charged = task.charged ?? [];
	const settled = settledIn(checks.slice(0, -1));
	const skills = evidenceOf(work.task, { ...check, charged, settled });
	const first = task.standing === 'open';
	const guided = check.byStep && isGuided(task);
	const stands = work.worked ? 'wrong' : standingAfter(checks, task, check, guided);
	stand(practice, given, stands, skills);
	const missed = first && !check.holds && (guided || !check.byStep);
	const verdicts = noteVerdicts(check.verdicts);
	await record(practice, given, skills, {
		...check,
		typed: { ...check.typed },
		verdicts,
		opened: [...check.opened],
		part: check.byStep && check.holds && !check.accepted
	});
	if (missed) await bringBack(practice, task, skills);
}

/** Nobody asked for the steps of a task that is talked through: they count as the whole would. */
function isGuided({ planned }: RunTask): boolean {
	return planned?.worked === true;
}

function standingAfter(
	checks: readonly Check[],
	{ standing }: RunTask,
	check: Check,
	guided: boolean
): RunTask['standing'] {
	if (!check.holds) return 'wrong';
	// A right step on the way decides nothing yet.
	if (check.byStep && !check.accepted) return standing;
	const tried = guided ? checks.some(({ holds }) => !holds) : checks.length > 1 || check.byStep;
	return tried || check.opened.length > 0 || !check.accepted ? 'helped' : 'right';
}

export async function noteChoice(
	practice: Practice,
	given: AnswerGiven,
	check: Check,
	cause: Cause
): Promise<void> {
	const { work, task, checks } = given;
	const settled = settledIn(checks.slice(0, -1));
	const notes = { ...check, charged: task.charged ?? [], settled };
	const { told, skills } = toldBy(work.task, notes, cause);
	stand(practice, given, task.standing, skills);
	await painted();
	await record(practice, given, skills, {
		...check,
		typed: { ...check.typed },
		verdicts: noteVerdicts(check.verdicts),
		opened: [...check.opened],
		told
	});
}

export async function noteWorked(practice: Practice, given: AnswerGiven): Promise<void> {
	const { work, task } = given;
	const untried = task.standing === 'open';
	const skills = untried ? givenUp(work.task) : [];
	stand(practice, given, 'wrong', skills);
	if (!untried) return;
	await painted();
	const facts = { typed: {}, verdicts: {}, opened: [], byStep: work.byStep };
	await record(practice, given, skills, facts);
	await bringBack(practice, task, skills);
}

async function record(
	practice: Practice,
	{ work, task, run, at, since }: AnswerGiven,
	skills: readonly SkillEvidence[],
	facts: Pick<AttemptFacts, 'typed' | 'verdicts' | 'opened' | 'byStep' | 'part' | 'told'>
): Promise<void> {
	const isOpen = practice.work === work;
	const seconds = Math.min((at - (isOpen ? practice.since : since)) / 1000, longestSeconds);
	if (isOpen) {
		practice.since = at;
		practice.saved = 'saving';
		practice.turn++;
	}
	const { turn } = practice;
	const { typed, verdicts, opened, byStep, part, told } = facts;
	const attempt: AttemptFacts = {
		task: work.task.number,
		level: work.task.id.level,
		runId: run.id,
		source: run.topic === 'plan' ? 'plan' : 'practice',
		typed,
		verdicts,
		opened,
		byStep,
		...(byStep && isGuided(task) && { guided: true }),
		...(part && { part }),
		worked: work.worked,
		seconds,
		skills: [...skills],
		...(told && told.length > 0 && { told }),
		...(work.charts.length > 0 && { charts: [...work.charts] }),
		givens: givensOf(work.task)
	};
	const saved = await logbook.record(attempt);
	// By now it may be a later answer whose standing is shown.
	if (isOpen && turn === practice.turn) practice.saved = saved ? 'saved' : 'failed';
}

/** A miss comes back in the same run, with new numbers, after two or three other tasks. */
async function bringBack(
	practice: Practice,
	{ number }: RunTask,
	skills: readonly SkillEvidence[]
): Promise<void> {
	const { id, topic } = practice.run ?? {};
	const planner = topic === 'plan' ? await plan.load() : null;
	const { run } = practice;
	// The person may have gone on meanwhile, to another task or another run.
	const index = run?.tasks.findIndex((task) => task.number === number) ?? -1;
	if (!run || run.id !== id || index < 0) return;
	const skill = skills.find(({ result }) => result === 'wrong')?.skill;
	practice.keep(
		planner ? plan.missed(planner, run, { index, skill }, below) : freeReturn(run, index)
	);
}

/** Where the task stands in the run as it is now. */
function placeOf(practice: Practice, { work, task }: AnswerGiven): Place | null {
	const { run } = practice;
	if (!run) return null;
	const isOpen = practice.work === work;
	const at = isOpen ? run.at : run.tasks.findIndex(({ number }) => number === task.number);
	const now = run.tasks[at];
	return now ? { run, at, task: now, isOpen } : null;
}

interface Place {
	readonly run: Run;
	readonly at: number;
	readonly task: RunTask;
	readonly isOpen: boolean;
}

function stand(
	practice: Practice,
	given: AnswerGiven,
	standing: RunTask['standing'],
	skills: readonly SkillEvidence[]
): void {
	const place = placeOf(practice, given);
	if (!place) return;
	const { run, at, task, isOpen } = place;
	const before = task.charged ?? [];
	const wrong = skills.filter(({ result }) => result === 'wrong').map(({ skill }) => skill);
	const charged = [...before, ...wrong.filter((skill) => !before.includes(skill))];
	const noted = { ...run, tasks: run.tasks.with(at, { ...task, standing, charged }) };
	if (isOpen) practice.keepNotes(noted);
	else practice.keep(noted);
}

/** The run with a task of the missed one's kind after three others, while others follow. */
function freeReturn(run: Run, index: number): Run {
	if (index + 1 >= run.tasks.length) return run;
	const { code, level } = readTaskNumber(run.tasks[index]?.number ?? '');
	const card = cardByCode(code);
	const place = Math.min(Math.max(index + 4, run.at + 1), run.tasks.length);
	// Between a worked task and its own nothing comes.
	const at = run.tasks[place - 1]?.standing === 'shown' ? place + 1 : place;
	return card ? { ...run, tasks: run.tasks.toSpliced(at, 0, newTask(card, level, below)) } : run;
}
