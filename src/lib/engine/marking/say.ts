import type { Task } from '../tasks/task.ts';
import { roundingSays } from '../quantity/kinds/find-mistakes.ts';
import { kindAt } from '../solver/kind-at.ts';
import { factorSays } from './factor.ts';
import { type Cause, choicesIn, stepOfSlip, type Verdict } from './verdict.ts';

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
	const { slips, steps } = task.method;
	const labelled = (step: string) => `“${steps[step]?.label ?? step}”`;
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
			return `That is ${labelled(cause.step)}; another step is asked for.`;
		case 'factor':
			return factorSays(task, cause.of, cause.times);
		case 'unit':
			return unitSays(cause.unit);
		case 'rounding':
			return roundingSays(kind, cause);
		case 'digits':
			return cause.how === 'point'
				? 'The digits are right; the decimal point is not.'
				: 'Two digits have changed places.';
		case 'breaks':
			return cause.says;
		case 'unknown':
			return 'This number alone does not tell which step went wrong; work the steps one by one.';
		default:
			return cause satisfies never;
	}
}

/** The step that a cause lies in, if it can be told. */
export function stepOf(task: Task, cause: Cause, key: string): string | null {
	switch (cause.kind) {
		case 'slip':
			return stepOfSlip(task.method, cause.slips[0] ?? '') || null;
		case 'unit':
		case 'rounding':
		case 'digits':
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
