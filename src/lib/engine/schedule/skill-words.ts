import type { Method } from '../solver/method.ts';
import type { SkillId } from './skill.ts';

/** A skill in words. */
export interface SkillWords {
	readonly label: string;
	/** Titles of the methods it is part of. */
	readonly methods: readonly string[];
	/** Sentences of its slips, by the id they have in records. */
	readonly slips: ReadonlyMap<string, string>;
}

/** Every skill of the methods in words; one that several share is named as in the first. */
export function skillWords(methods: readonly Method[]): ReadonlyMap<SkillId, SkillWords> {
	const words = new Map<SkillId, SkillWords>();
	for (const { steps, slips, title } of new Set(methods)) {
		for (const [key, { skill, label }] of Object.entries(steps)) {
			const own = Object.values(slips).filter(({ step }) => step === key);
			const said = own.map(({ id, says }) => [id, says] as const);
			const before = words.get(skill);
			words.set(skill, {
				label: before?.label ?? label,
				methods: [...(before?.methods ?? []), title],
				slips: new Map([...(before?.slips ?? []), ...said])
			});
		}
	}
	return words;
}
