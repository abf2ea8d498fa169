import type { Task } from '$lib/engine/tasks/task.ts';
import { stepsOf } from '$lib/engine/tasks/task.ts';
import { stepOf } from '$lib/engine/marking/say.ts';
import type { Verdict } from '$lib/engine/marking/verdict.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { AnswerLine } from '../sheet/answer-line.svelte.ts';
import type { TaskWork } from '../sheet/task-work.svelte.ts';

/** One field of a question: what was typed, how it was read, and its verdict once checked. */
export interface AskedLine {
	readonly key: string;
	readonly label: string;
	readonly typed: string;
	/** How it was read; empty for a choice, which reads as it stands. */
	readonly read: string;
	readonly verdict: Verdict | null;
}

export interface AskedCheck {
	/** Steps opened before. */
	readonly opened: number;
	readonly byStep: boolean;
	readonly accepted: boolean;
	readonly lines: readonly AskedLine[];
}

/** A question to an instructor, with everything found again that is shown of it. */
export interface Asked {
	readonly task: Task;
	readonly units: LengthUnit;
	readonly opened: number;
	readonly byStep: boolean;
	readonly worked: boolean;
	/** Checks before those shown. */
	readonly before: number;
	readonly checks: readonly AskedCheck[];
	/** What stood in the fields and was not checked. */
	readonly open: readonly AskedLine[];
	/** Lines of scratch arithmetic, as typed. */
	readonly scratch?: readonly string[] | undefined;
	readonly note: string;
}

/** The filled lines of a piece of work. */
export function linesOf(work: TaskWork): AskedLine[] {
	return work.lines
		.filter((line) => line.text.trim() !== '')
		.map((line) => ({
			key: line.key,
			label: line.label,
			typed: line.text,
			read: readAs(line),
			verdict: work.last?.verdicts[line.key] ?? null
		}));
}

function readAs({ reading, choices }: AnswerLine): string {
	switch (reading.state) {
		case 'read':
			return choices.length > 0 ? '' : `read as ${reading.said}`;
		case 'which':
			return 'not settled which of two sizes';
		case 'unread':
		case 'empty':
		case 'arithmetic':
			return 'could not be read';
		default:
			return reading satisfies never;
	}
}

/** Where the working stopped, in one sentence. */
export function stoppedAt(asked: Asked): string {
	const last = asked.checks.at(-1);
	if (asked.worked) return 'The whole working was shown.';
	if (!last) {
		return asked.opened > 0 ? 'Steps were opened; nothing was checked.' : 'Nothing was checked.';
	}
	if (last.lines.every(({ verdict }) => verdict === null)) return 'The last entry was not marked.';
	if (last.accepted) return 'The answer was right; the question is about the rest.';
	return wrongStep(asked, last) ?? nextStep(asked, last);
}

function wrongStep({ task }: Asked, { lines }: AskedCheck): string | null {
	const { steps } = task.method;
	for (const { key, verdict } of lines) {
		if (verdict?.kind !== 'rework') continue;
		const step = stepOf(task, verdict.cause, key);
		if (step === null) return 'The number alone does not tell at which step.';
		return `At the step “${steps[step]?.label ?? step}”.`;
	}
	return null;
}

/** Step by step, all entered so far may be right. */
function nextStep({ task }: Asked, { lines }: AskedCheck): string {
	const { steps } = task.method;
	const done = new Set(lines.map(({ key }) => key));
	const next = stepsOf(task).find((key) => steps[key]?.tolerance && !done.has(key));
	return next === undefined ? 'After the last step.' : `Before the step “${steps[next]?.label}”.`;
}
