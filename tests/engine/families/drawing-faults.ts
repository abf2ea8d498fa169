import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import type { Drawing } from '../../../src/lib/engine/figures/drawing.ts';
import { toSvg } from '../../../src/lib/engine/figures/to-svg.ts';
import type { LengthUnit, Value } from '../../../src/lib/engine/quantity/value.ts';
import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { outcomeOf } from './many-tasks.ts';

/** Numbers that nobody should answer, and somebody will. */
const absurd = [0, -1, 1e-9, 0.3, 7, 1e6];

/** Tasks that absurd answers are tried on; what they draw hardly hangs on the givens. */
const triedAbsurdly = 40;

/**
 * What is wrong with the drawings of these tasks: their figures in both units, and what the right
 * answer, every slip and absurd answers do to the metal.
 */
export function drawingFaults(tasks: readonly Task[]): string[] {
	return tasks.flatMap((task, i) => [
		...figureFaults(task, 'in'),
		...figureFaults(task, 'mm'),
		...task.drawn.asked.flatMap((key) =>
			effectFaults(task, key, i < triedAbsurdly ? absurdAt(task, key) : [])
		)
	]);
}

function figureFaults(task: Task, units: LengthUnit): string[] {
	const { family, method, drawn } = task;
	const say = (key: string, value: Value) => textAt(method, key, value, units);
	const drawing = family.figure(drawn.given, say);
	return isDrawn(drawing) ? [] : [`${task.number}: figure in ${units}`];
}

/** Absurd answers of the kind that is asked for. */
function absurdAt(task: Task, key: string): readonly Value[] {
	const right = task.right[key] ?? 0;
	const kind = kindAt(task.method, key);
	if (kind.numbers(right).length === 0) return ['nonsense'];
	return absurd.map((one) => kind.map(right, () => one));
}

function effectFaults(task: Task, key: string, others: readonly Value[]): string[] {
	const slipped = [...task.slips.values()].map((values) => values[key] ?? 0);
	const entries = new Set([task.right[key] ?? 0, ...slipped, ...others]);
	return [...entries].flatMap((entered) => {
		const outcome = outcomeOf(task, key, entered);
		if (!outcome) return [];
		const sound = isDrawn(outcome.drawing) && /^[A-Z0-9−].*[.]$/.test(outcome.says);
		return sound ? [] : [`${task.number}: ${key} ${String(entered)}: ${outcome.says}`];
	});
}

/** Whether a drawing has a size that a page can show, and nothing that could not be worked. */
export function isDrawn(drawing: Drawing, { least = 100, most = 700 } = {}): boolean {
	const svg = toSvg(drawing);
	const [, width, height] = /viewBox="\S+ \S+ (\d+) (\d+)"/.exec(svg)?.map(Number) ?? [];
	if (width === undefined || height === undefined || /NaN|Infinity|undefined/.test(svg))
		return false;
	return width > least && width < most && height > 20 && height < 600 && drawing.title.length > 10;
}
