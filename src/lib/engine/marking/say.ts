import { stepsOf, type Task } from '../tasks/task.ts';
import { roundingSays } from '../quantity/kinds/find-mistakes.ts';
import { kindAt } from '../solver/kind-at.ts';
import { factorSays } from './factor.ts';
import {
	type Cause,
	choicesIn,
	type DigitsHow,
	type OrderHow,
	stepOfSlip,
	type Verdict
} from './verdict.ts';

/** The verdict on step `key`, one clear sentence. */
export function sayVerdict(task: Task, verdict: Verdict, key: string): string {
	switch (verdict.kind) {
		case 'accept':
			return verdict.carried ? 'Correct from your earlier number.' : 'Right.';
		case 'holds':
		case 'unread':
			return verdict.says;
		case 'rework':
			return sayCause(task, verdict.cause, key);
		default:
			return verdict satisfies never;
	}
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
			return copiedSays(task, cause.step, key);
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
			return hasOpenSteps(task, key)
				? 'This number alone does not tell which step went wrong; work the steps one by one.'
				: 'This number does not tell what went wrong; work this step once more.';
		default:
			return cause satisfies never;
	}
}

const digitsSay: Readonly<Record<DigitsHow, string>> = {
	point: 'The digits are right; the decimal point is not.',
	swapped: 'Two digits have changed places.',
	dropped: 'A digit was left out.',
	doubled: 'A digit was typed twice.'
};

const orderSays: Readonly<Record<OrderHow, string>> = {
	reversed: 'The right values, listed from the other end: begin where the task begins.',
	mixed: 'The right values, but not in the order of the task.'
};

/** Whether there are steps to work before this one that are not asked for. */
function hasOpenSteps({ method, drawn }: Task, key: string): boolean {
	const steps = stepsOf({ method, drawn });
	return steps.slice(0, steps.indexOf(key) + 1).some((step) => !drawn.asked.includes(step));
}

/** `That is the number for “Grip”; here “Length needed” is wanted.` */
function copiedSays({ method, drawn }: Task, place: string, key: string): string {
	const given = method.given[place];
	if (!given) {
		const [is, wanted] = [place, key].map((step) => method.steps[step]?.label ?? step);
		return `That is the number for “${is}”; here “${wanted}” is wanted.`;
	}
	const told = drawn.labels?.[place];
	const label = typeof told === 'string' ? told : given.label;
	const one = given.kind.isList ? 'one of ' : '';
	return `That is ${one}“${label}”, as given; work out what is asked for.`;
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
