import type { Task } from '../tasks/task.ts';
import type { Style } from '../quantity/kind.ts';
import { styleAt } from '../solver/show.ts';
import type { Cause, UnitSlip } from './verdict.ts';

const unitWords: Readonly<Record<UnitSlip, string>> = {
	'mm-for-inch': 'That is the right size in millimetres, read as inches.',
	'inch-for-mm': 'That is the right size in inches, read as millimetres.',
	thousandths: 'That is the right size in thousandths; write it as inches.',
	sixteenths: 'That counts sixteenths; write the size in inches or as a dash number.',
	radians: 'That angle is in radians; the shop works in degrees.'
};

/** One wrong answer to step `key`, one clear sentence, in the trade's words. */
export function sayCause(task: Task, cause: Cause, key: string): string {
	const { slips, steps } = task.method;
	const labelled = (step: string) => `“${steps[step]?.label ?? step}”`;
	const saying = (id: string | undefined) => (id === undefined ? '' : (slips[id]?.says ?? ''));
	switch (cause.kind) {
		case 'slip': {
			const said = cause.slips.map(saying).join(' And: ');
			return cause.also ? `${said} And: ${unitWords[cause.also]}` : said;
		}
		case 'either':
			return `One of two slips: ${cause.slips.map(saying).join(' Or: ')} Open the steps to see which.`;
		case 'other-step':
			return `That is ${labelled(cause.step)}; another step is asked for.`;
		case 'unit':
			return unitWords[cause.unit];
		case 'rounding':
			return isStocked(task, key)
				? 'Rounded off: give the stocked size itself.'
				: roundingWords[cause.how];
		case 'digits':
			return cause.how === 'point'
				? 'The digits are right; the decimal point is not.'
				: 'Two digits have changed places.';
		case 'order':
			return `${cause.got === 1 ? 'One value is' : `${cause.got} values are`} here; ${cause.wanted} are wanted.`;
		case 'unknown':
			return 'This number alone does not tell which step went wrong; work the steps one by one.';
		default:
			return cause satisfies never;
	}
}

const roundingWords: Readonly<Record<'end' | 'way' | 'cut', string>> = {
	end: 'Rounded too coarsely: keep thousandths.',
	way: 'Rounded on the way: carry thousandths from step to step and round once, at the end.',
	cut: 'Cut off instead of rounded: a 5 or more raises the digit before it.'
};

const stocked: ReadonlySet<Style> = new Set(['rivet-length', 'rivet-diameter', 'drill']);

function isStocked({ method }: Task, key: string): boolean {
	return stocked.has(styleAt(method, key));
}

/** The step that a cause lies in, if it can be told. */
export function stepOf(task: Task, cause: Cause, key: string): string | null {
	switch (cause.kind) {
		case 'slip':
			return task.method.slips[cause.slips[0] ?? '']?.step ?? null;
		case 'unit':
		case 'rounding':
		case 'digits':
		case 'order':
			return key;
		case 'other-step':
			return key;
		case 'either':
		case 'unknown':
			return null;
		default:
			return cause satisfies never;
	}
}
