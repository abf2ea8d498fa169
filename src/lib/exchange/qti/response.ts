import { kindAt } from '../../engine/solver/kind-at.ts';
import type { Kind } from '../../engine/quantity/kinds/kind.ts';
import { carriedRoom } from '../../engine/quantity/kinds/find-mistakes.ts';
import type { Value } from '../../engine/quantity/value.ts';
import { evaluate } from '../../engine/solver/evaluate.ts';
import { carriedIn, differs, toleranceAt } from '../../engine/solver/tolerance.ts';
import { optionTexts, type Question } from '../../engine/sets/rehearsal.ts';
import type { Task } from '../../engine/tasks/task.ts';
import { el, words } from './xml.ts';

/** One value that an item asks for, in the words of QTI. */
export interface Response {
	/** Declarations of what is answered, with the right answer. */
	readonly declarations: readonly string[];
	/** Where it is entered. */
	readonly interaction: string;
	/** The condition under which it is right. */
	readonly right: string;
	/** Conditions of wrong answers that a slip leads to, and what is said of each. */
	readonly slips: readonly { readonly when: string; readonly says: string }[];
}

/** Most slips that are told apart in one answer. */
const mostSlips = 12;

/** Computed values are taken to a billionth; a processor compares floats, at both edges inside. */
const edge = 5e-10;

/**
 * What step `key` of a task asks for; null where QTI has no way to mark it.
 *
 * @param id identifier of the response, such as `R1`
 */
export function responseTo(task: Task, key: string, id: string): Response | null {
	const kind = kindAt(task.method, key);
	const right = task.right[key] ?? '';
	if (kind.choices.length > 0) return chosenWord(task, key, id, kind.choices);
	if (kind.dimension.formula !== null) return numbers(task, key, id, kind);
	return typeof right === 'string' ? typedWords(task, key, id, right) : null;
}

/** The options of a question as a choice. */
export function choiceOf(question: Question, id: string): Response {
	const texts = optionTexts(question, 'in');
	const { slips } = question.task.method;
	// Where either of two slips leads to an option, neither is said.
	const certain = question.options.flatMap(({ cause }, i) =>
		cause?.kind === 'slip'
			? { when: isChosen(id, i), says: slips[cause.slips[0] ?? '']?.says ?? '' }
			: []
	);
	return choice(id, labelOf(question.task, question.key), texts, question.right, certain);
}

function chosenWord(task: Task, key: string, id: string, choices: readonly string[]): Response {
	const right = choices.indexOf(String(task.right[key]));
	const slips = slipValues(task, key).flatMap(({ value, says }) => {
		const at = choices.indexOf(String(value));
		return at < 0 || at === right ? [] : { when: isChosen(id, at), says };
	});
	return choice(id, labelOf(task, key), choices, right, slips);
}

function choice(
	id: string,
	label: string,
	texts: readonly string[],
	right: number,
	slips: Response['slips']
): Response {
	const options = texts.map((text, i) =>
		el('qti-simple-choice', { identifier: letter(i) }, words(text))
	);
	return {
		declarations: [declaration(id, 'identifier', letter(right))],
		interaction: el(
			'qti-choice-interaction',
			{ 'response-identifier': id, shuffle: false, 'max-choices': 1 },
			el('qti-prompt', {}, words(label)),
			...options
		),
		right: isChosen(id, right),
		slips
	};
}

function letter(place: number): string {
	return String.fromCharCode('A'.charCodeAt(0) + place);
}

function isChosen(id: string, place: number): string {
	return el('qti-match', {}, variable(id), base('identifier', letter(place)));
}

/** A number, or a list of them, each in a field of its own. */
function numbers(task: Task, key: string, id: string, kind: Kind): Response {
	const { method, drawn, right } = task;
	const wanted = kind.numbers(right[key] ?? '');
	const rounded = evaluate(method, drawn.given, { carry: carriedIn(method) })[key] ?? '';
	const carried = kind.numbers(rounded);
	const ids = wanted.map((_, i) => (kind.isList ? `${id}-${i + 1}` : id));
	const tolerance = toleranceAt(method, key).valueOf();
	const near = (room: number, values: readonly number[]) =>
		all(ids.map((one, i) => isNear(one, values[i] ?? 0, room)));
	const { unit } = kind.dimension;
	const fields = ids.map((one) =>
		el('qti-text-entry-interaction', { 'response-identifier': one, 'expected-length': 10 })
	);
	const entry = unit === '' ? 'decimal number' : `decimal number, ${unit}`;
	return {
		declarations: ids.map((one, i) => declaration(one, 'float', decimal(wanted[i] ?? 0))),
		interaction: el('p', {}, `${words(labelOf(task, key))} (${words(entry)}): ${fields.join(' ')}`),
		right: el(
			'qti-or',
			{},
			near(tolerance, wanted),
			near(carriedRoom(kind, tolerance).valueOf(), carried)
		),
		slips: slipValues(task, key).flatMap(({ value, says }) => {
			const made = kind.numbers(value);
			return made.length === wanted.length ? { when: near(0.5 / kind.fine, made), says } : [];
		})
	};
}

function isNear(id: string, value: number, room: number): string {
	const tolerance = decimal(room + edge, 10);
	return el(
		'qti-equal',
		{ 'tolerance-mode': 'absolute', tolerance },
		variable(id),
		base('float', decimal(value))
	);
}

function all(conditions: readonly string[]): string {
	const [only = ''] = conditions;
	return conditions.length === 1 ? only : el('qti-and', {}, ...conditions);
}

/** Digits without an exponent. */
function decimal(value: number, places = 9): string {
	return value.toFixed(places).replace(/\.?0+$/, '');
}

function typedWords(task: Task, key: string, id: string, right: string): Response {
	const isTyped = (text: string) =>
		el('qti-string-match', { 'case-sensitive': false }, variable(id), base('string', text));
	const field = el('qti-text-entry-interaction', {
		'response-identifier': id,
		'expected-length': Math.max(10, right.length + 4)
	});
	return {
		declarations: [declaration(id, 'string', right)],
		interaction: el('p', {}, `${words(labelOf(task, key))}: ${field}`),
		right: isTyped(right),
		slips: slipValues(task, key).map(({ value, says }) => ({ when: isTyped(String(value)), says }))
	};
}

/** What single slips lead to at a step, each value once, those met often first. */
function slipValues(task: Task, key: string): { value: Value; says: string }[] {
	const { method, right, slips } = task;
	const found: { value: Value; says: string }[] = [];
	const isNew = (value: Value) =>
		found.every((one) => differs(method, key, { [key]: one.value }, { [key]: value }));
	const isSeldom = (id: string) => Number(method.slips[id]?.rare ?? false);
	const inOrder = [...slips].sort(([one], [other]) => isSeldom(one) - isSeldom(other));
	for (const [id, { [key]: value }] of inOrder) {
		if (value === undefined || found.length === mostSlips) continue;
		if (!differs(method, key, right, { [key]: value }) || !isNew(value)) continue;
		found.push({ value, says: method.slips[id]?.says ?? '' });
	}
	return found;
}

function labelOf({ method }: Task, key: string): string {
	return method.steps[key]?.label ?? key;
}

function declaration(id: string, type: string, right: string): string {
	return el(
		'qti-response-declaration',
		{ identifier: id, cardinality: 'single', 'base-type': type },
		el('qti-correct-response', {}, el('qti-value', {}, words(right)))
	);
}

export function variable(id: string): string {
	return el('qti-variable', { identifier: id });
}

export function base(type: string, value: string | number): string {
	return el('qti-base-value', { 'base-type': type }, words(value));
}
