import { topicIds, topics } from '$lib/engine/families/topics.ts';
import type { Forecast } from '$lib/engine/schedule/forecast.ts';
import type { Learning } from '$lib/engine/schedule/learning.ts';
import { isMet } from '$lib/engine/schedule/memory.ts';
import type { SkillId } from '$lib/engine/schedule/skill.ts';
import type { GivenUp, StandRow, WeakStep } from '$lib/ui/plan/rows.ts';
import type { Planner } from './planner.ts';
import { leftIn, type Run } from '../practice/run.ts';

/** Where the learner stands in each topic. */
export function standRows(planner: Planner, forecast: Forecast, learning: Learning): StandRow[] {
	return forecast.topics.map(({ topic, today: now, then, steps, metThen, leftOut, nextDay }) => {
		const skills = planner.syllabus.skills.filter((skill) => skill.topic === topic);
		const met = skills.filter(({ id }) => isMetIn(learning, id)).length;
		return { topic, name: nameOf(topic), met, metThen, steps, now, then, leftOut, nextDay };
	});
}

/** Steps to look at, at most. */
const mostWeak = 5;

/**
 * The steps that were missed and not put right since, then the weakest others, with what went
 * wrong in them; `run` is today's, if it is under way.
 */
export function weakSteps(
	planner: Planner,
	forecast: Forecast,
	learning: Learning,
	run: Run | null
): WeakStep[] {
	const back = new Set(leftIn(run).map(({ planned }) => planned?.skill));
	const missed = new Set(forecast.missed.map(({ skill }) => skill));
	const others = forecast.weakest.filter(({ skill }) => !missed.has(skill));
	const steps = [...forecast.missed, ...others].slice(0, mostWeak);
	return steps.map(({ skill, recall, nextDay }) => {
		const note = learning.slips[skill];
		const slip = note && { ...note, says: planner.slipSays(skill, note.slip) };
		return {
			skill,
			label: planner.label(skill),
			work: workOf(planner, skill),
			now: recall,
			slip: slip?.says ? slip : null,
			missedDay: learning.memories[skill]?.missedDay ?? null,
			nextDay: run && back.has(skill) ? run.day : nextDay
		};
	});
}

/** The kind of work a step belongs to, as the start page names it. */
function workOf(planner: Planner, skill: SkillId): string {
	const using = planner.families.filter(({ method, others = [] }) =>
		[method, ...others].some(({ steps }) =>
			Object.values(steps).some((step) => step.skill === skill)
		)
	);
	const [first, ...others] = using.map(({ name }) => name);
	if (first === undefined) return '';
	return others.length === 0 ? first : `${first} and ${others.length} more`;
}

/** What the time does not reach, by topic; labels that several steps share are said once. */
export function givenUpBy(planner: Planner, unreached: readonly SkillId[]): GivenUp[] {
	const wanted = new Set(unreached);
	const skills = planner.syllabus.skills.filter(({ id }) => wanted.has(id));
	return [...new Set(skills.map(({ topic }) => topic))].map((topic) => {
		const ids = skills.filter((skill) => skill.topic === topic).map(({ id }) => id);
		const labels = [...new Set(ids.map((id) => planner.label(id)))];
		return { topic, name: nameOf(topic), steps: ids.length, labels };
	});
}

function isMetIn({ memories }: Learning, skill: SkillId): boolean {
	const memory = memories[skill];
	return memory !== undefined && isMet(memory);
}

function nameOf(topic: string): string {
	const id = topicIds.find((one) => one === topic);
	return id === undefined ? topic : topics[id];
}
