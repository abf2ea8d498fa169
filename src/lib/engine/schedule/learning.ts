import { dayOf } from './day.ts';
import type { Attempt, KnownEvent, LabCheck } from './event.ts';
import { emptyMemory, type Evidence, type Memory, remember } from './memory.ts';
import type { SkillId } from './skill.ts';

/** How many of a learner's newest tasks may not come again with the same numbers. */
export const freshTasks = 50;

/** A slip and when it was made last. */
export interface SlipNote {
	readonly slip: string;
	readonly day: number;
	readonly times: number;
}

/** What a day's practice came to. */
export interface DayNote {
	right: number;
	helped: number;
	wrong: number;
	seconds: number;
}

/** All that the plan and the pages need of a learner's log, worked out attempt by attempt. */
export interface Learning {
	readonly memories: Record<SkillId, Memory>;
	/** Newest slip in each skill. */
	readonly slips: Record<SkillId, SlipNote>;
	/** Task numbers of the newest tasks, newest last. */
	readonly newest: string[];
	/** Their drawn numbers, as `givensOf` writes them. */
	readonly givens: string[];
	/** By day number. */
	readonly days: Record<number, DayNote>;
	/** Tasks finished and the seconds they took, for the pace. */
	tasks: number;
	seconds: number;
}

/** What an empty log comes to. */
export function emptyLearning(): Learning {
	return { memories: {}, slips: {}, newest: [], givens: [], days: {}, tasks: 0, seconds: 0 };
}

/** Working it out from the log. The state is handed on and changed in place. */
export const learningFold = {
	name: 'learning',
	version: 7,
	empty: emptyLearning(),
	apply(state: Learning, event: KnownEvent): Learning {
		if (event.type === 'attempt') attempt(state, event);
		if (event.type === 'lab-check') labCheck(state, event);
		return state;
	}
};

function attempt(state: Learning, event: Attempt): void {
	const day = dayOf(event.day);
	const repeat = isRepeat(state, event);
	for (const { skill, result, slip } of event.skills) {
		const before = state.memories[skill] ?? emptyMemory;
		state.memories[skill] = remember(before, result, day);
		if (slip !== undefined && !isTold(event, skill)) noteSlip(state, skill, slip, day);
	}
	for (const { skill, slip } of event.told ?? []) noteSlip(state, skill, slip, day);
	const note = (state.days[day] ??= { right: 0, helped: 0, wrong: 0, seconds: 0 });
	note.seconds += event.seconds;
	state.seconds += event.seconds;
	// A task that nobody went through with is none that was done.
	if (!repeat && !event.part) {
		note[standing(event)] += 1;
		// A question of a rehearsal that nobody came to says nothing of the pace.
		if (event.seconds > 0) state.tasks += 1;
		keepNewest(state.newest, event.task);
		keepNewest(state.givens, event.givens);
	}
}

/** A checked part is no task: it takes no place among the newest, and no time of the pace. */
function labCheck(state: Learning, event: LabCheck): void {
	const day = dayOf(event.day);
	for (const { skill, result, slip } of event.skills) {
		state.memories[skill] = remember(state.memories[skill] ?? emptyMemory, result, day);
		if (slip !== undefined) noteSlip(state, skill, slip, day);
	}
}

/** A slip that is told stands once, whether its skill was charged with it or before. */
export function isTold({ told = [] }: Attempt, skill: SkillId): boolean {
	return told.some((one) => one.skill === skill);
}

function noteSlip({ slips }: Learning, skill: SkillId, slip: string, day: number): void {
	const times = slips[skill]?.slip === slip ? (slips[skill]?.times ?? 0) + 1 : 1;
	slips[skill] = { slip, day, times };
}

function keepNewest(list: string[], one: string): void {
	list.push(one);
	if (list.length > freshTasks) list.shift();
}

/** Whether the attempt is a further try at one of the newest tasks. */
export function isRepeat({ newest }: Learning, event: Attempt): boolean {
	return newest.includes(event.task);
}

/** How a check of a task stands when it is the first. */
export function standing(event: Attempt): Evidence {
	const accepted = Object.values(event.verdicts).every(
		(verdict) => verdict.kind === 'accept' && !verdict.carried
	);
	if (!accepted || Object.keys(event.verdicts).length === 0) return 'wrong';
	return event.opened.length > 0 || (event.byStep && !event.guided) ? 'helped' : 'right';
}

/** Seconds a task takes this learner: the mean, starting from two minutes. */
export function pace({ tasks, seconds }: Learning): number {
	const start = { tasks: 5, seconds: 120 };
	const mean = (seconds + start.tasks * start.seconds) / (tasks + start.tasks);
	return Math.min(600, Math.max(30, mean));
}
