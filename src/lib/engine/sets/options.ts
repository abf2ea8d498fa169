import type { Random } from '../families/random.ts';
import type { Task } from '../tasks/task.ts';
import { kindAt } from '../solver/kind-at.ts';
import { carriedIn, differs } from '../solver/tolerance.ts';
import type { Cause } from '../marking/verdict.ts';
import type { Value } from '../quantity/value.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { evaluate } from '../solver/evaluate.ts';
import { textAt } from '../solver/show.ts';
import { orNull } from '../solver/trade-function.ts';

/** The slips behind a wrong option: made one or together, or one of several. */
export type OptionCause = Extract<Cause, { kind: 'slip' | 'either' }>;

/** One of the values to choose from. */
export interface Option {
	/** In the base unit of its step. */
	readonly value: Value;
	/** What leads to it; null at the right one. */
	readonly cause: OptionCause | null;
}

/** Wrong options beside the right one, unless the answer is one of fewer words. */
const wrongCount = 3;

/**
 * The options for one value of a task: the right one and three that its slips lead to, numbers
 * from small to large and words in their usual order. No two lie within the tolerance of each
 * other. Null when the slips of this task do not give enough.
 */
export function optionsFor(task: Task, key: string, random: Random): Option[] | null {
	const right: Option = { value: task.right[key] ?? '', cause: null };
	const wrong = wrongOptions(task, key);
	const kind = kindAt(task.method, key);
	if (kind.choices.length > 0) return amongWords(right, wrong, kind, random);
	const pool = mostLikely(task, key, wrong);
	return kind.options.parted
		? crossed(right, pool, task, key, random)
		: spread(right, pool, kind, random);
}

/** Values that one slip leads to, each once. */
function wrongOptions(task: Task, key: string): Option[] {
	const { method } = task;
	const { options } = kindAt(method, key);
	const rounded = evaluate(method, task.drawn.given, { carry: carriedIn(method) });
	const same = (a: Value, b: Value) => !differs(method, key, { [key]: a }, { [key]: b });
	const found: { value: Value; slips: string[] }[] = [];
	for (const [id, { [key]: value }] of task.slips) {
		if (value === undefined || !options.fits(value)) continue;
		if ([task.right, rounded].some((values) => same(values[key] ?? '', value))) continue;
		const known = found.find((one) => same(one.value, value));
		if (known) known.slips.push(id);
		else found.push({ value, slips: [id] });
	}
	return found.map(({ value, slips }) => {
		const cause = causeOf(task, slips);
		// A question that is opened again has the value of the first one named.
		return { value: task.slips.get(cause.slips[0] ?? '')?.[key] ?? value, cause };
	});
}

/** As many slips are kept with an option; of so many it is said only that they are several. */
export const severalSlips = 4;

/** The common slips that lead to a value, or the rare ones where there are no others. */
function causeOf({ method }: Task, slips: readonly string[]): OptionCause {
	const common = slips.filter((id) => !method.slips[id]?.rare);
	const likely = common.length > 0 ? common : slips;
	return likely.length === 1
		? { kind: 'slip', slips: likely }
		: { kind: 'either', slips: likely.slice(0, severalSlips) };
}

function stepAt({ method }: Task, slip: string | undefined): string {
	return method.slips[slip ?? '']?.step ?? '';
}

function amongWords(
	right: Option,
	wrong: readonly Option[],
	kind: Kind,
	random: Random
): Option[] | null {
	const count = Math.min(wrongCount, kind.choices.length - 1);
	return wrong.length < count ? null : inOrder([right, ...random.some(wrong, count)], kind);
}

function inOrder(options: readonly Option[], { options: rules }: Kind): Option[] {
	return [...options].sort((a, b) => rules.compare(a.value, b.value));
}

/** The options that stand out least, as many as are wanted and all that are as good. */
function mostLikely(task: Task, key: string, wrong: readonly Option[]): Option[] {
	const rated = wrong.map((option) => ({ option, rate: standsOut(task, key, option) }));
	const rates = rated.map(({ rate }) => rate).sort((a, b) => a - b);
	const most = rates[wrongCount - 1] ?? Infinity;
	return rated.filter(({ rate }) => rate <= most).map(({ option }) => option);
}

/** How well an option can be told from the answer without working, or is too near it to tell. */
function standsOut({ method, right }: Task, key: string, { value, cause }: Option): number {
	const answer = right[key] ?? '';
	const shown = textAt(method, key, value);
	const wanted = textAt(method, key, answer);
	// A size that is not stocked has no dash number or drill beside it.
	const unlike = ['(', '.'].some((mark) => shown.includes(mark) !== wanted.includes(mark));
	const bySize = kindAt(method, key).options.standsOut(value, answer);
	return bySize + 2 * Number(unlike) + Number(cause?.kind === 'either');
}

/** Slips on both sides force the right one into the middle often enough: the ends count twice. */
const places = [0, 0, 1, 2, 3, 3];

/** Numbers, with the place of the right one drawn first as far as the slips allow. */
function spread(
	right: Option,
	pool: readonly Option[],
	kind: Kind,
	random: Random
): Option[] | null {
	if (pool.length < wrongCount) return null;
	const { compare } = kind.options;
	const below = pool.filter(({ value }) => compare(value, right.value) < 0);
	const above = pool.filter(({ value }) => compare(value, right.value) > 0);
	const place = random.pick(places);
	const before = Math.min(Math.max(place, wrongCount - above.length), below.length);
	const chosen = [...random.some(below, before), ...random.some(above, wrongCount - before)];
	return inOrder([right, ...chosen], kind);
}

/**
 * A text put together from parts: two slips, and both at once. Were every wrong text off by one
 * slip only, the right one could be told as the one most like the others.
 */
function crossed(
	right: Option,
	pool: readonly Option[],
	task: Task,
	key: string,
	random: Random
): Option[] | null {
	const pairs = pool.flatMap((one, i) => pool.slice(i + 1).map((two) => [one, two] as const));
	const apart = pairs.filter(
		([one, two]) => stepAt(task, one.cause?.slips[0]) !== stepAt(task, two.cause?.slips[0])
	);
	if (apart.length === 0) return null;
	const pair = random.pick(apart);
	const both = together(
		task,
		key,
		pair.flatMap(({ cause }) => cause?.slips ?? [])
	);
	const kind = kindAt(task.method, key);
	const options = [right, ...pair, ...(both ? [both] : [])];
	const unlike = options.filter(
		({ value }, i) => !options.slice(0, i).some((one) => !kind.differs(one.value, value, 0))
	);
	return unlike.length <= wrongCount ? null : inOrder(options, kind);
}

/** What several slips lead to together; null where the trade has no answer. */
export function together(task: Task, key: string, ids: readonly string[]): Option | null {
	const slips = Object.fromEntries(ids.map((id) => [stepAt(task, id), id]));
	const values = orNull(() => evaluate(task.method, task.drawn.given, { slips }));
	return values && { value: values[key] ?? '', cause: { kind: 'slip', slips: ids } };
}
