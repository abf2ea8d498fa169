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
	/** What was told, entry by entry. */
	readonly told: string;
}

/** Holds what marking tells about an answer against what the rules call true. */
export async function judge(answer: WrongAnswer): Promise<Judged> {
	const { task, typed, rules } = answer;
	const names = new Set(rules.flatMap((rule) => namesOf(rule, task.drawn.given)));
	const told = await toldOf(task, typed);
	if (!told) return { answer, names, fate: 'unread', told: 'not read' };
	const each = [...told.values()].map((one) => fateOf(one, names));
	// One slip is told at the first wrong entry; the others must follow from it or be named alike.
	const fate = worst.find((one) => each.includes(one)) ?? 'accepted';
	const words = [...told].map(([key, one]) => `${key}: ${inWords(one)}`).join('; ');
	return { answer, names, fate, told: words };
}

const worst: readonly Fate[] = ['false', 'cannot tell', 'offered', 'unread', 'named'];

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
