import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import type { WrongAnswer } from './corpus.ts';
import { namesOf } from './rule.ts';
import { type Told, toldOf } from './told.ts';

/** How marking fared with a wrong answer. */
export const fates = ['named', 'offered', 'false', 'cannot tell', 'unread', 'accepted'] as const;
export type Fate = (typeof fates)[number];

export interface Judged {
	readonly answer: WrongAnswer;
	/** What marking may truly say. */
	readonly names: ReadonlySet<string>;
	readonly fate: Fate;
	/** Named, though another of its mistakes leads to the same entries and is not told. */
	readonly oneOfSeveral: boolean;
	/** What was told, entry by entry. */
	readonly told: string;
}

/** Holds what marking tells about an answer against what the rules call true. */
export async function judge(answer: WrongAnswer): Promise<Judged> {
	const { task, typed, rules } = answer;
	const each = rules.map((rule) => new Set(withEqualSteps(namesOf(rule, task.drawn.given), task)));
	const names = new Set(each.flatMap((some) => [...some]));
	const told = await toldOf(task, typed);
	if (!told) return { answer, names, fate: 'unread', oneOfSeveral: false, told: 'not read' };
	const fate = worstOf(told, names);
	const oneOfSeveral = fate === 'named' && each.some((some) => worstOf(told, some) !== 'named');
	const words = [...told].map(([key, one]) => `${key}: ${inWords(one)}`).join('; ');
	return { answer, names, fate, oneOfSeveral, told: words };
}

const otherStep = 'other-step:';

/** Where two steps come to the same, the result of one is that of the other as well. */
function withEqualSteps(names: readonly string[], { method, right }: Task): string[] {
	return names.flatMap((name) => {
		if (!name.startsWith(otherStep)) return [name];
		const value = right[name.slice(otherStep.length)];
		const equal = Object.keys(method.steps).filter((key) => right[key] === value);
		return [name, ...equal.map((key) => otherStep + key)];
	});
}

const worst: readonly Fate[] = ['false', 'cannot tell', 'offered', 'unread', 'named'];

/** One slip is told at the first wrong entry; the others must follow from it or be named alike. */
function worstOf(told: ReadonlyMap<string, Told>, names: ReadonlySet<string>): Fate {
	const each = [...told.values()].map((one) => fateOf(one, names));
	return worst.find((one) => each.includes(one)) ?? 'accepted';
}

function fateOf(told: Told, names: ReadonlySet<string>): Fate {
	switch (told.kind) {
		case 'right':
			return 'accepted';
		case 'cannot tell':
		case 'unread':
			return told.kind;
		case 'offered':
			return told.causes.some((cause) => isTrue(cause, names)) ? 'offered' : 'false';
		case 'named':
			if (isTrue(told.cause, names)) return 'named';
			// That it holds as it stands is no reason.
			return told.cause.includes('holds') ? 'cannot tell' : 'false';
	}
}

function isTrue(cause: readonly string[], names: ReadonlySet<string>): boolean {
	return cause.some((name) => names.has(name));
}

function inWords(told: Told): string {
	if (told.kind === 'named') return told.cause[0] ?? '';
	if (told.kind === 'offered') return told.causes.map(([name]) => name).join(' or ');
	return told.kind;
}
