import type { Kind } from '../quantity/kinds/kind.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import { roundingSays } from '../quantity/kinds/find-mistakes.ts';
import { compiledOf } from '../solver/compiled.ts';
import { kindAt } from '../solver/kind-at.ts';
import { shortLabel } from '../solver/label.ts';
import type { Method } from '../solver/method.ts';
import { factorSays } from './factor.ts';
import {
	type Cause,
	choicesIn,
	type DigitsHow,
	type MisreadHow,
	type OtherStepCause,
	type OrderHow,
	stepOfSlip,
	type Verdict
} from './verdict.ts';

/** The verdict on step `key`, one clear sentence. */
export function sayVerdict(task: Task, verdict: Verdict, key: string): string {
	switch (verdict.kind) {
		case 'accept':
			return verdict.carried ? carriedSays(kindAt(task.method, key)) : 'Right.';
		case 'holds':
		case 'unread':
			return verdict.says;
		case 'rework':
			return sayCause(task, verdict.cause, key);
		default:
			return verdict satisfies never;
	}
}

/** A word that follows from a wrong number is not made right by that. */
function carriedSays({ choices }: Kind): string {
	return choices.length > 0
		? 'That follows from your earlier number, which is off.'
		: 'Correct from your earlier number.';
}

const numbers = ['no', 'one', 'two', 'three'];

/** One wrong answer to step `key`, one clear sentence, in the trade's words. */
export function sayCause(task: Task, cause: Cause, key: string): string {
	const { slips } = task.method;
	const saying = (id: string) => slips[id]?.says ?? '';
	const kind = kindAt(task.method, key);
	const unitSays = (id: string) => kind.mistakes.units.find((one) => one.id === id)?.says ?? '';
	switch (cause.kind) {
		case 'slip': {
			const said = cause.slips.map(saying).join(' And: ');
			return cause.also ? `${said} And: ${unitSays(cause.also)}` : said;
		}
		case 'either': {
			const causes = choicesIn(cause);
			const said = causes.map((one) => sayCause(task, one, key)).join(' Or: ');
			return `One of ${numbers[causes.length]}: ${said}`;
		}
		case 'other-step':
			return copiedSays(task, cause, key);
		case 'misread':
			return misreadSays(task, cause.given, cause.how);
		case 'factor':
			return factorSays(task, cause.of, cause.times);
		case 'unit':
			return unitSays(cause.unit);
		case 'rounding':
			return roundingSays(kind, cause);
		case 'digits':
			return digitsSay[cause.how];
		case 'order':
			return orderSays[cause.how];
		case 'breaks':
			return cause.says;
		case 'unknown':
			return unknownSays(kind, isOfSeveral(task, cause, key));
		default:
			return cause satisfies never;
	}
}

/** The sentence on several entries that have one cause. */
export function sayTogether(task: Task, verdict: Verdict, key: string): string {
	return verdict.kind === 'rework' && verdict.cause.kind === 'unknown'
		? unknownSays({ isList: true }, isOfSeveral(task, verdict.cause, key))
		: sayVerdict(task, verdict, key);
}

/** Whether a step before it may have gone wrong instead. */
function isOfSeveral(task: Task, cause: Cause, key: string): boolean {
	return !(cause.kind === 'unknown' && cause.here) && stepsNotAsked(task, key).length > 0;
}

function unknownSays({ isList }: Pick<Kind, 'isList'>, ofSeveral: boolean): string {
	if (ofSeveral) {
		const alone = isList ? 'These numbers alone do' : 'This number alone does';
		return `${alone} not tell which step went wrong; work the steps one by one.`;
	}
	return `${isList ? 'These numbers do' : 'This number does'} not tell what went wrong; work this step once more.`;
}

const digitsSay: Readonly<Record<DigitsHow, string>> = {
	point: 'The digits are right; the decimal point is not.',
	swapped: 'Two digits have changed places.',
	dropped: 'A digit was left out.',
	doubled: 'A digit was typed twice.',
	one: 'Right but for one digit: work it once more.'
};

const orderSays: Readonly<Record<OrderHow, string>> = {
	reversed: 'The right values, listed from the other end: begin where the task begins.',
	mixed: 'The right values, but not in the order of the task.',
	shifted: 'The first of them are right; from one on, all are off by as much: work that one again.'
};

/** Whether a step is worked from another one, at once or over others. */
function isWorkedFrom(method: Method, key: string, from: string): boolean {
	const needs = compiledOf(method).steps[key]?.needs ?? [];
	return needs.some((one) => one === from || isWorkedFrom(method, one, from));
}

/** The steps to work before this one, and itself, that are not asked for. */
function stepsNotAsked(task: Pick<Task, 'method' | 'drawn'>, key: string): string[] {
	const steps = stepsOf(task);
	return steps.slice(0, steps.indexOf(key) + 1).filter((step) => !task.drawn.asked.includes(step));
}

/** `That is “Grip”, not “Length needed”.` Or, at each of two that were exchanged: `Swapped with “Grip”.` */
function copiedSays(
	{ method, drawn }: Task,
	{ step: place, swapped }: OtherStepCause,
	key: string
): string {
	const given = method.given[place];
	if (!given) {
		const [is = '', wanted = ''] = [place, key].map(
			(step) => `“${shortLabel(method.steps[step]?.label ?? step)}”`
		);
		if (swapped) return `Swapped with ${is}.`;
		const isOnTheWay =
			stepsNotAsked({ method, drawn }, key).includes(place) && isWorkedFrom(method, key, place);
		return `That is ${is}, ${isOnTheWay ? `a step on the way to ${wanted}` : `not ${wanted}`}.`;
	}
	const one = given.kind.isList ? 'one of ' : '';
	return `That is ${one}“${labelOf({ drawn, method }, place)}”, as given; work out what is asked for.`;
}

function labelOf({ method, drawn }: Pick<Task, 'method' | 'drawn'>, given: string): string {
	const told = drawn.labels?.[given];
	return typeof told === 'string' ? told : (method.given[given]?.label ?? given);
}

const misreadHow: Readonly<Record<MisreadHow, (given: string) => string>> = {
	larger: (given) => `${given} one size too large`,
	smaller: (given) => `${given} one size too small`,
	swapped: (given) => `two digits of ${given} exchanged`,
	point: (given) => `the decimal point of ${given} in the wrong place`,
	fraction: (given) => `another fraction in ${given}`,
	keyed: (given) => `${given} keyed in by its denominator (1/16 is 0.0625, not 0.16)`
};

/** `You get this with “Rivet diameter” one size too large: read the task again.` */
function misreadSays(task: Task, given: string, how: MisreadHow): string {
	const one = task.method.given[given]?.kind.isList ? 'one of ' : '';
	const named = `${one}“${labelOf(task, given)}”`;
	return `You get this with ${misreadHow[how](named)}: read the task again.`;
}

/** The step that a cause lies in, if it can be told. */
export function stepOf(task: Task, cause: Cause, key: string): string | null {
	switch (cause.kind) {
		case 'slip':
			return stepOfSlip(task.method, cause.slips[0] ?? '') || null;
		case 'unit':
		case 'rounding':
		case 'digits':
		case 'order':
		case 'breaks':
		case 'factor':
		case 'misread':
		case 'other-step':
			return key;
		case 'either': {
			const steps = new Set(choicesIn(cause).map((one) => stepOf(task, one, key)));
			const [step = null] = steps;
			return steps.size === 1 ? step : null;
		}
		case 'unknown':
			return null;
		default:
			return cause satisfies never;
	}
}
