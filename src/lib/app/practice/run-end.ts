import { capital, decapital } from '$lib/engine/quantity/capital.ts';
import type { Attempt } from '$lib/engine/schedule/event.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';
import type { Forecast, ForecastDay } from '$lib/engine/schedule/forecast.ts';
import { isTold } from '$lib/engine/schedule/learning.ts';
import type { SkillId } from '$lib/engine/schedule/skill.ts';
import type { Sitting } from '$lib/engine/schedule/sitting.ts';
import { streaksIn } from '$lib/engine/schedule/streaks.ts';
import { counted } from '$lib/ui/counted.ts';
import { dayName } from '$lib/ui/dates.ts';
import { streakWords } from '$lib/ui/home/streak-words.ts';
import { inWords, rightAtFirst } from '$lib/ui/number-words.ts';
import { dayWords } from '$lib/ui/reason.ts';
import { aboutMinutes } from '$lib/ui/plan/amounts.ts';
import { rehearsalDay } from '$lib/ui/plan/day-bars.ts';
import type { Planner } from '../plan/planner.ts';
import type { Run, RunTask } from './run.ts';

/** What the end of a run is told from. */
export interface RunEndFacts {
	readonly run: Run;
	readonly planner: Planner;
	/** Of the rest of the plan, where the run was worked today. */
	readonly forecast: Forecast;
	/** Today. */
	readonly day: number;
	/** Day of the run's last answer. */
	readonly worked: number;
	/** The exam when it is ahead. */
	readonly exam: number | null;
	/** The attempts of the last days, oldest first. */
	readonly attempts: readonly Attempt[];
	/** The sitting before the run. */
	readonly last: Sitting | null;
}

export interface RunRow {
	readonly name: string;
	readonly standing: RunTask['standing'];
	readonly note: string;
	/** Day on which it comes up again; null where none is planned. */
	readonly returns: number | null;
	/** Whether it comes up then as a part of other work. */
	readonly within: boolean;
}

/** One fact of the run: what stands large, a sentence, and a line below. */
export interface RunFact {
	readonly big: string;
	readonly says: string;
	readonly more: string;
}

export interface RunEnd {
	readonly title: string;
	readonly says: string;
	readonly rows: readonly RunRow[];
	/** The day on which most of them return, told once; null where they differ. */
	readonly returns: number | null;
	readonly facts: readonly RunFact[];
	/** The step to work once more while it is fresh; null when nothing was missed. */
	readonly again: { readonly skill: SkillId; readonly label: string } | null;
	/** Tasks not answered. */
	readonly open: number;
	/** Whether the run was worked on an earlier day. */
	readonly isPast: boolean;
	/** The next day with tasks, be it today after a run of an earlier day. */
	readonly next: { readonly day: number; readonly tasks: number } | null;
	/** What the next day with tasks is for; null where none is planned. */
	readonly goal: { readonly head: string; readonly says: string } | null;
	readonly marks: readonly {
		readonly day: number;
		readonly label: string;
		readonly done?: boolean;
	}[];
}

/** Facts told at most. */
const mostFacts = 5;

/** Days of the first and the last answer in a run; `today` for both where `attempts` has none. */
export function daysWorked({ id }: Run, attempts: readonly Attempt[], today: number) {
	const days = attempts.filter(({ runId }) => runId === id).map(({ day }) => dayOf(day));
	return { first: days.at(0) ?? today, last: days.at(-1) ?? today };
}

export function runEnd(facts: RunEndFacts): RunEnd {
	const { run, forecast, worked } = facts;
	const asked = run.tasks.filter(({ standing }) => standing !== 'shown');
	const done = asked.filter(({ standing }) => standing !== 'open');
	const rows = done.map((task) => rowOf(task, facts));
	const count = (one: RunTask['standing']) => done.filter((task) => task.standing === one).length;
	const missed = done.find(
		({ standing, charged = [] }) => standing === 'wrong' && charged.length > 0
	);
	const [again = null] = missed?.charged ?? [];
	const next = forecast.days.find((one) => one.day > worked && one.tasks > 0) ?? null;
	return {
		title: `${done.length < asked.length ? 'So far' : 'Run done'}: ${unbroken(counted(done.length, 'task'))}, ${unbroken(counted(minutesOf(facts), 'minute'))}`,
		says: standWords(count('right'), count('helped'), count('wrong')),
		rows,
		returns: commonReturn(rows),
		facts: factsOf(facts, count('right'), done),
		again: again === null ? null : { skill: again, label: facts.planner.label(again) },
		open: asked.length - done.length,
		isPast: worked < facts.day,
		next,
		goal: next && goalOf(next, rows, facts.day),
		marks: marksOf(rows, facts)
	};
}

/** `Tomorrow: 8 tasks, about 20 minutes`, and which of these rows it brings back, and why. */
function goalOf({ day, tasks, minutes }: ForecastDay, rows: readonly RunRow[], today: number) {
	const back = rows.filter(({ returns }) => returns === day);
	const names = (wanted: (row: RunRow) => boolean) => [
		...new Set(back.filter(wanted).map(({ name }) => name))
	];
	const missed = names(({ standing, within }) => standing !== 'right' && !within);
	const hidden = names(({ standing, within }) => standing !== 'right' && within).filter(
		(name) => !missed.includes(name)
	);
	const kept = names(({ standing, within }) => standing === 'right' && !within).filter(
		(name) => ![...missed, ...hidden].includes(name)
	);
	const says = [
		missed.length > 0
			? `${fewOf(missed)} ${missed.length === 1 ? 'comes' : 'come'} back, missed this time.`
			: '',
		hidden.length > 0
			? `${fewOf(hidden)}, missed this time, ${hidden.length === 1 ? 'comes' : 'come'} back as a part of other work.`
			: '',
		kept.length > 0
			? `${fewOf(kept)} ${kept.length === 1 ? 'comes' : 'come'} up again, so that ${kept.length === 1 ? 'it stays' : 'they stay'}.`
			: ''
	];
	return {
		head: `${capital(dayWords(day, today))}: ${counted(tasks, 'task')}, ${aboutMinutes(minutes)}.`,
		says: says.filter(Boolean).join(' ') || 'New steps, each worked for you first.'
	};
}

function fewOf(names: readonly string[]): string {
	const all = names.map((name, i) => (i === 0 ? name : decapital(name)));
	if (all.length <= 2) return all.join(' and ');
	return `${all.slice(0, 2).join(', ')} and ${inWords(all.length - 2)} more`;
}

function minutesOf({ run, attempts }: RunEndFacts): number {
	const seconds = attempts
		.filter(({ runId }) => runId === run.id)
		.reduce((sum, attempt) => sum + attempt.seconds, 0);
	return Math.max(1, Math.round(seconds / 60));
}

/** `Six right at first, two right later, one not put right.` */
function standWords(right: number, helped: number, wrong: number): string {
	const parts = [
		rightAtFirst(right),
		helped > 0 ? `${inWords(helped)} right later` : '',
		wrong > 0 ? `${inWords(wrong)} not put right` : ''
	];
	return `${parts.filter(Boolean).join(', ')}.`;
}

function rowOf(task: RunTask, { planner, forecast, worked }: RunEndFacts): RunRow {
	const code = task.number.slice(0, 2);
	const family = planner.families.find((one) => one.code === code);
	const kind = planner.syllabus.kinds.find(({ id }) => id === task.number.slice(0, 3));
	const [charged] = task.charged ?? [];
	const skill = charged ?? task.planned?.skill ?? kind?.aim ?? '';
	const returns = forecast.comesUp.get(skill)?.find((one) => one > worked) ?? null;
	const then = forecast.kindsOn.get(returns ?? 0) ?? [];
	return {
		name: family?.name ?? task.number,
		standing: task.standing,
		note: noteOf(task, charged === undefined ? '' : planner.label(charged)),
		returns,
		within: !then.some((one) => one.family === code && one.skills.includes(skill))
	};
}

/** Rows from which on a day that most of them have is told once. */
const manyRows = 4;

function commonReturn(rows: readonly RunRow[]): number | null {
	const count = (day: number | null) => rows.filter(({ returns }) => returns === day).length;
	const found = rows.find(({ returns }) => returns !== null && count(returns) > rows.length / 2);
	return found && count(found.returns) >= manyRows ? found.returns : null;
}

function noteOf({ standing, planned }: RunTask, charged: string): string {
	if (standing !== 'right') return charged;
	if (planned?.reason.kind === 'missed') return 'back after a miss';
	return planned?.reason.kind === 'new' ? 'new' : '';
}

function factsOf(facts: RunEndFacts, right: number, done: readonly RunTask[]): RunFact[] {
	const { last, day } = facts;
	const before = last ? last.right + last.helped + last.wrong : 0;
	// Without one to compare it with, it would say again what the head says.
	const first: RunFact[] = last
		? [
				{
					big: `${right} of ${done.length}`,
					says: 'right at first.',
					more: `${capital(dayWords(last.day, day).replace(/^on /, ''))} it was ${last.right} of ${before}.`
				}
			]
		: [];
	return [...first, ...newOf(facts, done), ...streaksOf(facts), ...slipsOf(facts)].slice(
		0,
		mostFacts
	);
}

function newOf(
	{ planner, forecast, day, worked }: RunEndFacts,
	done: readonly RunTask[]
): RunFact[] {
	const skills = [
		...new Set(
			done.flatMap(({ planned }) => (planned?.reason.kind === 'new' ? planned.reason.skill : []))
		)
	];
	if (skills.length === 0) return [];
	const next = skills.map((skill) => forecast.comesUp.get(skill)?.find((d) => d > worked));
	const days = next.filter((d) => d !== undefined);
	const together = new Set(next).size === 1;
	const labels = skills.map((skill) => planner.label(skill));
	const more = labels.length - 3;
	const few = labels.slice(0, 3).join('; ') + (more > 0 ? `; and ${inWords(more)} more` : '');
	return [
		{
			big: `${skills.length} new`,
			says: `${skills.length === 1 ? 'Step' : 'Steps'}: ${few}.`,
			more:
				days.length === 0
					? ''
					: `Up again ${together ? '' : 'one by one, the first '}${dayWords(Math.min(...days), day)}.`
		}
	];
}

function streaksOf({ attempts, run, planner, day }: RunEndFacts): RunFact[] {
	const here = new Set(
		attempts
			.filter(({ runId }) => runId === run.id)
			.flatMap((one) => one.skills.map((s) => s.skill))
	);
	return streaksIn(attempts)
		.filter(({ skill }) => here.has(skill))
		.slice(0, 2)
		.map((streak) => ({
			big: `${streak.right} ×`,
			says: streakWords(streak, planner.label(streak.skill), day),
			more: ''
		}));
}

/** Slips that were made more than once in the run. */
function slipsOf({ attempts, run, planner, forecast, day, worked }: RunEndFacts): RunFact[] {
	const times = new Map<string, { skill: SkillId; slip: string; count: number }>();
	for (const attempt of attempts) {
		if (attempt.runId !== run.id) continue;
		const charged = attempt.skills.filter(({ skill }) => !isTold(attempt, skill));
		for (const { skill, slip } of [...charged, ...(attempt.told ?? [])]) {
			if (slip === undefined) continue;
			const key = `${skill} ${slip}`;
			times.set(key, { skill, slip, count: (times.get(key)?.count ?? 0) + 1 });
		}
	}
	return [...times.values()]
		.filter(({ count }) => count > 1)
		.flatMap(({ skill, slip, count }) => {
			const says = planner.slipSays(skill, slip);
			const next = forecast.comesUp.get(skill)?.find((one) => one > worked);
			const more =
				next === undefined ? '' : `${planner.label(skill)} is up again ${dayWords(next, day)}.`;
			return says === '' ? [] : [{ big: `${count} ×`, says, more }];
		})
		.slice(0, 2);
}

function marksOf(rows: readonly RunRow[], { day, worked, exam, forecast }: RunEndFacts) {
	const byDay = new Map<number, Set<string>>();
	for (const { name, returns } of rows) {
		if (returns !== null) byDay.set(returns, (byDay.get(returns) ?? new Set()).add(name));
	}
	const rehearsal = rehearsalDay(forecast.days, day, exam);
	return [
		{ day: worked, label: 'done', done: true },
		...(rehearsal === null ? [] : [{ day: rehearsal, label: 'rehearsal' }]),
		...[...byDay].map(([at, names]) => ({ day: at, label: fewNames([...names]) }))
	];
}

function fewNames(names: readonly string[]): string {
	const [only = ''] = names;
	return names.length === 1 ? decapital(only) : counted(names.length, 'task');
}

/** A number and its word, kept on one line. */
function unbroken(text: string): string {
	return text.replace(' ', '\u00a0');
}

/** `tomorrow · 8 tasks` */
export function nextWords(next: RunEnd['next'], day: number): string {
	return next === null
		? 'nothing planned'
		: `${dayName(next.day, day)} · ${counted(next.tasks, 'task')}`;
}
