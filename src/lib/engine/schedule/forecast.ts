import { FARTHEST, type Phase, portionOn, studyDays } from './calendar.ts';
import type { PlanInput } from './draft.ts';
import { ExpectedLearner } from './expected-learner.ts';
import { type Memory, isMet, recall } from './memory.ts';
import { planRun } from './plan.ts';
import { type PracticeMap, mapPractice } from './practice.ts';
import { type Run, afterMiss, runSeconds } from './run.ts';
import type { Skill, SkillId, TaskKind } from './skill.ts';

/** One day of the plan. */
export interface ForecastDay {
	readonly day: number;
	readonly phase: Phase;
	readonly tasks: number;
	/** Expected minutes of practice. */
	readonly minutes: number;
}

/**
 * Expected share of steps, 0 to 1, that are right at the first try in a fresh task. A step that was
 * never met counts as not right, whatever might be guessed.
 */
export interface Outlook {
	readonly today: number;
	/** On `until`, when every run up to then is done. */
	readonly then: number;
	/** Steps met by then, of those that are counted. */
	readonly metThen: number;
	readonly steps: number;
}

export interface TopicOutlook extends Outlook {
	readonly topic: string;
	/** Whether the learner leaves the topic out; it is then not counted in `all`. */
	readonly leftOut: boolean;
	/** The next day with a task of the topic; null when none is planned. */
	readonly nextDay: number | null;
}

export interface WeakSkill {
	readonly skill: SkillId;
	/** Expected share right today. */
	readonly recall: number;
	/** The next day with a task that exercises it; null when none is planned. */
	readonly nextDay: number | null;
}

/** What the plan leads to. */
export interface Forecast {
	/** The exam day, or `FARTHEST` days ahead when it is later; four weeks ahead when there is none. */
	readonly until: number;
	readonly days: readonly ForecastDay[];
	readonly all: Outlook;
	readonly topics: readonly TopicOutlook[];
	/** Met skills with the lowest expected recall today, lowest first. */
	readonly weakest: readonly WeakSkill[];
	/** Skills that were missed and not put right on a later day, weakest first. */
	readonly missed: readonly WeakSkill[];
	/** The days on which a task exercises a skill, in order; skills without any are left out. */
	readonly comesUp: ReadonlyMap<SkillId, readonly number[]>;
	/** The kinds of task of each day, in their order. */
	readonly kindsOn: ReadonlyMap<number, readonly TaskKind[]>;
	/** Skills the time does not reach: given up, unless there are more minutes or days. */
	readonly unreached: readonly SkillId[];
}

/** Days looked ahead when no exam is set. */
const HORIZON = 28;

/** The plan played through from `input.day`, today included, with answers as they are expected. */
export function forecast(input: PlanInput, weakest = 5): Forecast {
	const { course, day, syllabus } = input;
	const ahead = course.exam !== null && course.exam >= day;
	const until = ahead ? Math.min(course.exam, day + FARTHEST) : day + HORIZON;
	const learner = new ExpectedLearner(input.memories);
	const map = mapPractice(syllabus);
	const runs = studyDays(course.off, day, until).map((at) => playDay(input, at, learner, map));
	const outlook = (skills: readonly Skill[]): Outlook => ({
		today: shareRight(skills, input.memories, day),
		then: shareRight(skills, learner.memories, until),
		metThen: skills.filter(({ id }) => learner.memories.has(id)).length,
		steps: skills.length
	});
	const isOut = (topic: string) => course.without?.includes(topic) ?? false;
	const counted = syllabus.skills.filter(({ topic }) => !isOut(topic));
	const met = metSkills(counted, input, runs);
	const topics = [...new Set(syllabus.skills.map((skill) => skill.topic))];
	return {
		until,
		days: runs.map((run) => summary(run, input)),
		all: outlook(counted),
		topics: topics.map((topic) => {
			const skills = syllabus.skills.filter((skill) => skill.topic === topic);
			const next = nextDay(skills, runs);
			return { topic, leftOut: isOut(topic), nextDay: next, ...outlook(skills) };
		}),
		weakest: met.slice(0, weakest),
		missed: met.filter(({ skill }) => input.memories.get(skill)?.missedDay !== null),
		comesUp: daysBySkill(runs),
		kindsOn: new Map(runs.map(({ day, items }) => [day, items.map(({ kind }) => kind)])),
		unreached: counted.map(({ id }) => id).filter((id) => !learner.memories.has(id))
	};
}

function playDay(input: PlanInput, day: number, learner: ExpectedLearner, map: PracticeMap): Run {
	const spent = day === input.day ? input.spent : 0;
	const plan = { ...input, day, spent, memories: learner.memories, chosen: undefined };
	let run = planRun(plan, map);
	for (let i = 0; i < run.items.length; i++) {
		const item = run.items[i];
		if (item && !learner.answer(item.kind, day)) run = afterMiss(run, i, item.skill, input.policy);
	}
	return run;
}

function summary({ day, items }: Run, { course, pace, policy }: PlanInput): ForecastDay {
	const { phase } = portionOn(course, day, pace.task, policy);
	return { day, phase, tasks: items.length, minutes: runSeconds(items) / 60 };
}

function daysBySkill(runs: readonly Run[]): Map<SkillId, number[]> {
	const days = new Map<SkillId, number[]>();
	for (const { day, items } of runs) {
		for (const skill of new Set(items.flatMap(({ kind }) => kind.skills))) {
			days.set(skill, [...(days.get(skill) ?? []), day]);
		}
	}
	return days;
}

function nextDay(skills: readonly Skill[], runs: readonly Run[]): number | null {
	const ids = new Set(skills.map((skill) => skill.id));
	return runs.find((run) => run.items.some((item) => ids.has(item.skill)))?.day ?? null;
}

function shareRight(
	skills: readonly Skill[],
	memories: ReadonlyMap<SkillId, Memory>,
	day: number
): number {
	const met = skills.flatMap(({ id }) => memories.get(id) ?? []).filter(isMet);
	const sum = met.reduce((total, memory) => total + recall(memory, day), 0);
	return skills.length === 0 ? 0 : sum / skills.length;
}

/** Every met skill, weakest first. */
function metSkills(
	skills: readonly Skill[],
	{ memories, day }: PlanInput,
	runs: readonly Run[]
): WeakSkill[] {
	return skills
		.flatMap(({ id }) => {
			const memory = memories.get(id);
			if (!memory || !isMet(memory)) return [];
			const next = runs.find((run) => run.items.some(({ kind }) => kind.skills.includes(id)));
			return [{ skill: id, recall: recall(memory, day), nextDay: next?.day ?? null }];
		})
		.sort((a, b) => a.recall - b.recall);
}
