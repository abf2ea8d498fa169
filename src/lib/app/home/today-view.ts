import { capital, inSentence } from '$lib/engine/quantity/capital.ts';
import type { Forecast } from '$lib/engine/schedule/forecast.ts';
import type { Learning } from '$lib/engine/schedule/learning.ts';
import { isMet } from '$lib/engine/schedule/memory.ts';
import type { SkillId } from '$lib/engine/schedule/skill.ts';
import { counted } from '$lib/ui/counted.ts';
import { inWords } from '$lib/ui/number-words.ts';
import { aboutMinutes } from '$lib/ui/plan/amounts.ts';
import { rehearsalDay } from '$lib/ui/plan/day-bars.ts';
import { dayWords } from '$lib/ui/reason.ts';
import type { Planner } from '../plan/planner.ts';
import type { Planned, Run } from '../practice/run.ts';

/** What the first page of a learner with a history rests on. */
export interface TodayFacts {
	readonly planner: Planner;
	readonly learning: Learning;
	readonly forecast: Forecast;
	readonly day: number;
	/** The exam day that was set, be it past. */
	readonly exam: number | null;
	readonly offToday: boolean;
	/** What the plan has for today beside what was done. */
	readonly planned: readonly Planned[];
	/** Today's run when one was begun. */
	readonly run: Run | null;
}

/** A step in a list. */
export interface StepLine {
	readonly skill: SkillId;
	readonly label: string;
	readonly why: string;
	/** Days on which it comes up again. */
	readonly then: readonly number[];
	/** Id of the family whose work is drawn beside it. */
	readonly family: string;
}

export interface TodayView {
	readonly title: string;
	readonly says: string;
	/** What the filled button does, and says; null on a day without work. */
	readonly act: {
		readonly kind: 'start' | 'goOn';
		readonly name: string;
		/** Whether the day is done, and this is beyond it. */
		readonly beyond: boolean;
	} | null;
	/** Days left, when an exam is ahead. */
	readonly exam: number | null;
	readonly marks: readonly {
		readonly day: number;
		readonly label: string;
		readonly done?: boolean;
	}[];
	/** All that come back, missed ones first, and all that are new. */
	readonly back: readonly StepLine[];
	readonly fresh: readonly StepLine[];
	readonly met: number;
	readonly steps: number;
}

export function todayView(facts: TodayFacts): TodayView {
	const { run, planned, exam, day, forecast } = facts;
	const left = run ? leftOf(run) : [];
	const work = left.length > 0 ? left : planned;
	const ahead = exam !== null && exam > day ? exam : null;
	const back = backIn(work, facts);
	return {
		title: titleOf(facts, work, left.length > 0),
		says: saysOf(facts, work),
		act: actOf(facts, work, left.length > 0),
		exam: ahead,
		marks: ahead === null ? [] : marksOf(facts, work, ahead),
		back,
		fresh: freshIn(work, facts),
		met: metIn(facts),
		steps: forecast.all.steps
	};
}

/** Steps met, of those that the plan counts. */
function metIn({ planner, forecast, learning }: TodayFacts): number {
	const out = new Set(forecast.topics.flatMap(({ topic, leftOut }) => (leftOut ? topic : [])));
	return planner.syllabus.skills.filter(({ id, topic }) => {
		const memory = learning.memories[id];
		return memory && isMet(memory) && !out.has(topic);
	}).length;
}

/** What is still to be done of a run: a worked example that was not read counts its time. */
function leftOf({ tasks, at }: Run): Planned[] {
	return tasks.flatMap(({ standing, planned }, i) => {
		if (standing !== 'open' || !planned) return [];
		const read = planned.reading > 0 && i - 1 < at;
		return [read ? { ...planned, reading: 0, worked: false } : planned];
	});
}

export function minutesFor(work: readonly Planned[]): number {
	return work.reduce((sum, { seconds, reading }) => sum + seconds + reading, 0) / 60;
}

function titleOf(
	{ run, offToday, exam, day }: TodayFacts,
	work: readonly Planned[],
	begun: boolean
) {
	const amount = `${counted(work.length, 'task')}, ${aboutMinutes(minutesFor(work))}`;
	if (begun) return `Left today: ${amount}`;
	if (run) return 'Today’s tasks are done';
	if (work.length > 0) return `Today: ${amount}`;
	if (exam === day) return 'The exam is today';
	return offToday ? 'A day off' : 'Nothing is due today';
}

function saysOf(facts: TodayFacts, work: readonly Planned[]): string {
	const { run, exam, day } = facts;
	if (run && leftOf(run).length === 0) {
		if (work.length === 0) return 'That is all for today.';
		const more = `${counted(work.length, 'task')}, ${aboutMinutes(minutesFor(work))}`;
		return `There is time for more, if you like: ${more}.`;
	}
	if (work.length === 0) return exam === null ? '' : 'Choose a topic if you like.';
	const after = exam !== null && exam < day ? ' Your exam is over: what fades comes back.' : '';
	return mixOf(work, (one) => missedIn(one, facts).length > 0) + after;
}

/**
 * `Five bring back a miss, one has a new step, three keep what you know.` The numbers add up to the
 * tasks: one that brings back a miss counts as that, also where another step in it is new.
 *
 * @param isBack whether a step in it was missed and not put right since
 */
export function mixOf(work: readonly Planned[], isBack: (one: Planned) => boolean): string {
	const missed = work.filter(isBack).length;
	const fresh = work.filter((one) => !isBack(one) && isNew(one)).length;
	const kept = work.length - missed - fresh;
	const parts = [
		missed > 0 ? `${inWords(missed)} ${missed === 1 ? 'brings' : 'bring'} back a miss` : '',
		fresh > 0 ? `${inWords(fresh)} ${fresh === 1 ? 'has a new step' : 'have a new step'}` : '',
		kept > 0 ? `${inWords(kept)} ${kept === 1 ? 'keeps' : 'keep'} what you know` : ''
	].filter(Boolean);
	const text = parts.join(', ');
	return text === '' ? '' : `${capital(text)}.`;
}

function isNew({ reason, worked }: Planned): boolean {
	return reason.kind === 'new' || worked;
}

/** The steps of a task that were missed and not put right since, the one it was chosen for first. */
function missedIn({ kind, reason }: Planned, { planner, learning }: TodayFacts): SkillId[] {
	const own = reason.kind === 'missed' ? [reason.skill] : [];
	const skills = planner.syllabus.kinds.find(({ id }) => id === kind)?.skills ?? [];
	const missed = skills.filter((skill) => (learning.memories[skill]?.missedDay ?? null) !== null);
	return [...new Set([...own, ...missed])];
}

function actOf({ run }: TodayFacts, work: readonly Planned[], begun: boolean): TodayView['act'] {
	if (work.length === 0) return null;
	if (begun) return { kind: 'goOn', name: 'Go on with today’s tasks', beyond: false };
	if (!run) return { kind: 'start', name: 'Start today’s tasks', beyond: false };
	return { kind: 'start', name: `Work ${inWords(work.length)} more`, beyond: true };
}

function marksOf(facts: TodayFacts, work: readonly Planned[], exam: number) {
	const { forecast, day, planner } = facts;
	const byDay = new Map<number, string[]>();
	for (const { skill, nextDay } of forecast.missed) {
		const next = forecast.comesUp.get(skill)?.find((one) => one > day) ?? nextDay;
		if (next === null || next <= day) continue;
		byDay.set(next, [...(byDay.get(next) ?? []), inSentence(planner.label(skill))]);
	}
	const rehearsal = rehearsalDay(forecast.days, day, exam);
	return [
		facts.run && leftOf(facts.run).length === 0
			? { day, label: 'done', done: true }
			: { day, label: work.length > 0 ? counted(work.length, 'task') : 'today' },
		...(rehearsal === null ? [] : [{ day: rehearsal, label: 'rehearsal' }]),
		...[...byDay].map(([at, labels]) => ({ day: at, label: fewOf([...new Set(labels)]) }))
	];
}

function fewOf(labels: readonly string[]): string {
	return labels.length > 2 ? `${inWords(labels.length)} return` : labels.join(', ');
}

function backIn(work: readonly Planned[], facts: TodayFacts): StepLine[] {
	const missed = work.flatMap((one) => missedIn(one, facts).map((skill) => ({ ...one, skill })));
	const others = work.filter(({ reason }) => ['fading', 'sweep'].includes(reason.kind));
	return linesOf([...missed, ...others], (one) => whyBack(one, facts), facts);
}

function freshIn(work: readonly Planned[], facts: TodayFacts): StepLine[] {
	const wanted = work
		.filter(({ reason }) => reason.kind === 'new')
		.map((one) => ({ ...one, skill: one.reason.skill }));
	return linesOf(wanted, ({ kind }) => nameOf(kind, facts), facts);
}

function linesOf(
	items: readonly Planned[],
	why: (item: Planned) => string,
	facts: TodayFacts
): StepLine[] {
	const { planner, forecast, day } = facts;
	const once = items.filter(({ skill }, i) => items.findIndex((one) => one.skill === skill) === i);
	return once.map((item) => ({
		skill: item.skill,
		label: planner.label(item.skill),
		why: why(item),
		then: (forecast.comesUp.get(item.skill) ?? []).filter((one) => one > day).slice(0, 2),
		family: familyOf(item.kind, facts)?.id ?? ''
	}));
}

function whyBack({ skill, reason }: Planned, facts: TodayFacts): string {
	const { learning, planner, day } = facts;
	const missedDay =
		reason.kind === 'missed' && reason.skill === skill
			? reason.day
			: (learning.memories[skill]?.missedDay ?? null);
	if (missedDay !== null) {
		const slip = learning.slips[skill];
		const says = slip ? planner.slipSays(skill, slip.slip) : '';
		return says || `Missed ${dayWords(missedDay, day)}.`;
	}
	if (reason.kind === 'sweep') return 'A last look before the exam.';
	const seen = reason.kind === 'fading' ? reason.day : day;
	return `Last seen ${dayWords(seen, day)}.`;
}

function familyOf(kind: string, { planner }: TodayFacts) {
	return planner.families.find(({ code }) => code === kind.slice(0, 2));
}

function nameOf(kind: string, facts: TodayFacts): string {
	return familyOf(kind, facts)?.name ?? '';
}
