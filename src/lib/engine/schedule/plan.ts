import { type Portion, portionOn } from './calendar.ts';
import { Draft, type PlanInput } from './draft.ts';
import { isMet, recall } from './memory.ts';
import { SHIPPED, isDue, isOwed, urgency, urgencyOfNew } from './policy.ts';
import { type Practice, type PracticeMap, mapPractice } from './practice.ts';
import type { Reason, Run, RunItem } from './run.ts';
import type { SkillId, TaskKind } from './skill.ts';

/** Fewest other tasks between two that exercise the same skill, while there is a choice. */
const APART = 2;

export type { PlanInput };

/** A practice and its turn, from 0 to about 1: low goes first, other wishes apart. */
interface Candidate {
	readonly practice: Practice;
	readonly turn: number;
}

/** The run for `input.day`, in order; empty on a day off. */
export function planRun(input: PlanInput, map: PracticeMap = mapPractice(input.syllabus)): Run {
	const policy = input.policy ?? SHIPPED;
	const portion = portionFor(input);
	const draft = new Draft(input, map, portion, policy);
	const candidates = portion.seconds > 0 ? findCandidates(draft) : [];
	let rest = candidates;
	for (;;) {
		// Those in front are soon in the run, and then cost more than any turn of the rest.
		const front = rest.findIndex(({ practice }) => draft.since(practice.skill) === undefined);
		if (front !== 0) rest = front < 0 ? [] : rest.slice(front);
		const next =
			pick(firstSteps(candidates, draft), draft) ??
			pick(rest, draft, AGAIN) ??
			pick(candidates, draft);
		if (!next) break;
		take(next, draft);
	}
	return { day: input.day, items: draft.items, budget: portion.seconds };
}

/** Kinds that somebody chose one by one, as the items of a run: one with a step that is new is worked first. */
export function itemsOf(
	kinds: readonly TaskKind[],
	input: PlanInput,
	map: PracticeMap = mapPractice(input.syllabus)
): readonly RunItem[] {
	const chosen = new Set(kinds.flatMap(({ skills }) => skills));
	const draft = new Draft({ ...input, chosen }, map, portionFor(input), input.policy ?? SHIPPED);
	for (const kind of kinds) take({ kind, skill: kind.aim }, draft);
	return draft.items;
}

// Free choice works on a day off too, and for the usual minutes whatever the plan has for the day.
function portionFor({ course, day, pace, chosen, spent, policy }: PlanInput): Portion {
	const planned = portionOn(course, day, pace.task, policy);
	const portion: Portion = chosen ? { ...planned, seconds: course.minutes * 60 } : planned;
	return { ...portion, seconds: Math.max(0, portion.seconds - (spent ?? 0)) };
}

function findCandidates(draft: Draft): Candidate[] {
	const ofNew = turnOfNew(draft);
	return draft.map.practices
		.filter(({ skill }) => isWanted(skill, draft))
		.map((practice) => ({ practice, turn: turnOf(practice, ofNew, draft) }))
		.sort((a, b) => a.turn - b.turn);
}

// With an exam ahead every topic is begun before anything else is practised, last looks included.
function firstSteps(candidates: readonly Candidate[], draft: Draft): Candidate[] {
	if (!isBound(draft)) return [];
	return candidates.filter(
		({ practice: { skill } }) => !draft.isKnown(skill) && draft.topicAt(skill).lacksFirst
	);
}

/** Whether the run works towards an exam, by the plan's own choice. */
function isBound({ input, portion, policy }: Draft): boolean {
	const ahead = portion.phase === 'build' || portion.phase === 'sweep';
	return ahead && !input.chosen && policy.firstSteps > 0;
}

// Without an exam ahead nothing is practised before it is due.
function isWanted(skill: SkillId, { input, portion, policy, map }: Draft): boolean {
	if (input.chosen) return input.chosen.has(skill);
	if (input.course.without?.includes(map.topicOf.get(skill) ?? '')) return false;
	const memory = input.memories.get(skill);
	return portion.phase !== 'keep' || !memory || !isMet(memory) || isDue(memory, input.day, policy);
}

// The first of equals is taken, which is the easiest kind: for a new skill, and for one owed.
function turnOf({ skill, rung }: Practice, ofNew: number, draft: Draft): number {
	const memory = draft.memory(skill);
	if (!isMet(memory)) return ofNew;
	const { input, policy } = draft;
	const turn = 1 / (1 + urgency(memory, input.day, policy));
	if (isOwed(memory, input.day, policy)) return Math.min(turn, ofNew) / 2;
	return turn + LEVEL_WEIGHT * Math.abs(rung - memory.grasp);
}

// Just enough to choose among the kinds for one skill: the harder ones as grasp grows.
const LEVEL_WEIGHT = 1e-3;

// The sweep goes over what is there before it starts new things; so does practice without an exam.
function turnOfNew({ portion, input, policy }: Draft): number {
	if (portion.phase !== 'build') return 1;
	const courseDays = (input.course.exam ?? input.day) - input.course.start;
	return 1 / (1 + urgencyOfNew(Math.max(1, courseDays), policy));
}

/** The one that costs least, and less than `most`; the first of equals. */
function pick(
	candidates: readonly Candidate[],
	draft: Draft,
	most = Infinity
): Practice | undefined {
	// Only a guard for speed: without it every candidate would be asked and found too long.
	if (draft.isFull) return undefined;
	let best: Practice | undefined;
	let bestCost = most;
	for (const { practice, turn } of candidates) {
		if (turn >= bestCost) break;
		const cost = turn + penalty(practice, draft, bestCost - turn);
		if (cost < bestCost) [best, bestCost] = [practice, cost];
	}
	return best;
}

/** What it costs to aim at a skill once more in the same run. */
const AGAIN = 10;

// Just enough to choose among new steps: one of the topic that has come least far.
const SPREAD = 1e-3;

// What is wished for beside the turn, each wish weighing more than those before it together;
// Infinity for what may not be, or comes to `limit` anyway. Called for every candidate at every
// place, so cheap things first.
function penalty({ kind, skill }: Practice, draft: Draft, limit: number): number {
	const { input, portion } = draft;
	const last = draft.items.at(-1)?.kind;
	if (!input.chosen && kind.id === last?.id) return Infinity;
	const since = draft.since(skill);
	if (!input.chosen && portion.phase === 'keep' && since !== undefined) return Infinity;
	let cost = 0;
	if (isBound(draft) && !draft.isKnown(skill)) cost += SPREAD * draft.topicAt(skill).share;
	if (since !== undefined) cost += AGAIN * Math.max(1, draft.tries(skill));
	if (since !== undefined && since <= APART) cost += 1e3;
	if (kind.family === last?.family) cost += 2e3;
	if (kind.id === last?.id) cost += 4e3;
	if (cost >= limit) return Infinity;
	const { seconds, reading } = draft.timeFor(kind);
	if (draft.seconds + seconds + reading > portion.seconds) return Infinity;
	const ground = draft.ground(kind);
	if (ground === 'missing') return Infinity;
	return ground === 'shaky' ? cost + 5 : cost; // still better than the same skill twice on one day
}

function take({ kind, skill }: Omit<Practice, 'rung'>, draft: Draft): void {
	const reason = reasonFor(kind, skill, draft);
	const worked = draft.firstUnmet(kind) !== undefined;
	draft.add({ kind, skill, reason, worked, ...draft.timeFor(kind), returned: false });
}

function reasonFor(kind: TaskKind, skill: SkillId, draft: Draft): Reason {
	const memory = draft.memory(skill);
	if (!draft.input.chosen && memory.missedDay !== null)
		return { kind: 'missed', skill, day: memory.missedDay };
	const unmet = draft.firstUnmet(kind);
	if (unmet !== undefined) return { kind: 'new', skill: unmet };
	if (!isMet(memory)) return { kind: 'new', skill };
	if (draft.input.chosen) return { kind: 'chosen', skill };
	const { exam } = draft.input.course;
	if (draft.portion.phase === 'sweep' && exam !== null) return { kind: 'sweep', skill, exam };
	const day = Math.floor(memory.lastDay);
	return { kind: 'fading', skill, day, recall: recall(memory, draft.input.day) };
}
