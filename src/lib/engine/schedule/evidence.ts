import type { Task } from '../tasks/task.ts';
import type { Cause, Verdict, Verdicts } from '../marking/verdict.ts';
import type { Evidence } from './memory.ts';
import { leadingTo, skillOf } from './syllabus.ts';
import type { SkillId } from './skill.ts';

/** What one check of an answer shows about one skill. */
export interface SkillEvidence {
	readonly skill: SkillId;
	readonly result: Evidence;
	/** Id of the slip that sits in this step. */
	readonly slip?: string;
}

/** The circumstances of a check. */
export interface CheckNotes {
	readonly verdicts: Verdicts;
	/** Keys of the steps that had been opened. */
	readonly opened: readonly string[];
	/** Whether every step was entered by itself, so that none speaks for another. */
	readonly byStep: boolean;
	/** Skills charged by earlier checks of the same task; empty at the first. */
	readonly charged: readonly SkillId[];
	/** Keys of the steps that an earlier check accepted: they show nothing new. */
	readonly settled?: readonly string[];
}

/**
 * What a check shows, skill by skill. A right answer speaks for every step that leads to it; a
 * slip charges its own step and credits the others, because the number is what they lead to; a
 * number that nothing explains charges the step that was asked, and says nothing of the rest; one
 * that holds where a better is possible counts as helped. On a second try only the skills charged before are looked at: right now, they count as helped.
 */
export function evidenceOf(task: Task, notes: CheckNotes): SkillEvidence[] {
	const found = new Map<string, SkillEvidence>();
	for (const [key, verdict] of Object.entries(notes.verdicts)) {
		if (notes.settled?.includes(key)) continue;
		for (const [step, result, slip] of shownBy(task, key, verdict, notes)) {
			const skill = skillOf(task.method, step);
			const before = found.get(skill)?.result;
			if (before === undefined || worse(result, before)) {
				found.set(skill, { skill, result, ...(slip === undefined ? {} : { slip }) });
			}
		}
	}
	const all = [...found.values()];
	return notes.charged.length === 0 ? all : secondTry(all, notes.charged);
}

/** A slip that somebody has said to have made, in the step of a skill. */
export interface ToldSlip {
	readonly skill: SkillId;
	readonly slip: string;
}

/**
 * What it shows when somebody says which of several causes it was: the slip, and the skills that the
 * check before could say nothing of.
 *
 * @param notes the check with that cause; `charged` are the skills it charged without
 */
export function toldBy(
	task: Task,
	notes: CheckNotes,
	cause: Cause
): { readonly told: ToldSlip[]; readonly skills: SkillEvidence[] } {
	const { slips } = task.method;
	const told = (cause.kind === 'slip' ? cause.slips : []).flatMap((id) => {
		const slip = slips[id];
		return slip ? [{ skill: skillOf(task.method, slip.step), slip: slip.id }] : [];
	});
	const shown = evidenceOf(task, { ...notes, charged: [] });
	return { told, skills: shown.filter(({ skill }) => !notes.charged.includes(skill)) };
}

/** The evidence when the working is asked for before any answer. */
export function givenUp(task: Task): SkillEvidence[] {
	const { method } = task;
	return task.drawn.asked.map((key) => ({ skill: skillOf(method, key), result: 'wrong' }));
}

type Shown = readonly [step: string, result: Evidence, slip?: string];

function shownBy(task: Task, key: string, verdict: Verdict, notes: CheckNotes): Shown[] {
	const leading = notes.byStep ? [key] : leadingTo(task.method, key);
	const right = (step: string): Shown => [step, notes.opened.includes(step) ? 'helped' : 'right'];
	if (verdict.kind === 'accept') return (verdict.carried ? [key] : leading).map(right);
	// One that holds is as good as one that was helped to.
	if (verdict.kind === 'holds') {
		return leading.map((step) => (step === key ? [step, 'helped'] : right(step)));
	}
	// Only a part of an answer shows nothing.
	if (verdict.kind === 'unread') return [];
	if (!explains(verdict.cause)) return [[key, 'wrong']];
	const slips = slipsAt(task, verdict.cause, notes.verdicts);
	// Step by step, the slip may sit in a step that was left empty.
	return [...new Set([...leading, ...slips.keys()])].map((step) => {
		const slip = slips.get(step);
		if (slip !== undefined) return [step, 'wrong', task.method.slips[slip]?.id];
		return step === key && slips.size === 0 ? [step, 'wrong'] : right(step);
	});
}

/** Whether the cause accounts for the number, so that the other steps must have been right. */
function explains(cause: Cause): boolean {
	return ['slip', 'factor', 'unit', 'rounding', 'digits', 'order'].includes(cause.kind);
}

/** The slips by the step they sit in. A step answered right by itself made none. */
function slipsAt({ method }: Task, cause: Cause, verdicts: Verdicts): Map<string, string> {
	const ids = cause.kind === 'slip' ? cause.slips : [];
	const placed = ids.map((id) => [method.slips[id]?.step ?? '', id] as const);
	return new Map(placed.filter(([step]) => verdicts[step]?.kind !== 'accept'));
}

const order: readonly Evidence[] = ['right', 'helped', 'wrong'];

/** Whether one says more against a skill than the other. */
export function worse(one: Evidence, other: Evidence): boolean {
	return order.indexOf(one) > order.indexOf(other);
}

function secondTry(all: readonly SkillEvidence[], charged: readonly SkillId[]): SkillEvidence[] {
	return all
		.filter(({ skill, result }) => charged.includes(skill) && result !== 'wrong')
		.map((one) => ({ ...one, result: 'helped' }));
}
