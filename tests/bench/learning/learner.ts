import type { Chance } from './chance.ts';
import type { Ground } from './ground.ts';

/** A hidden learner. Policies see the answers, never the chances. Skills and days are numbers. */
export interface Learner {
	/** Try a fresh task on the skill; trying changes what is known. */
	answer(skill: number, day: number): boolean;
	/** Chance that a fresh task on the skill would be right on that day, with no more practice. */
	chance(skill: number, day: number): number;
}

/** A kind of learner; each seed gives another person of that kind. */
export interface World {
	readonly id: string;
	readonly label: string;
	learner(chance: Chance, ground: Ground): Learner;
}

/** Chance that the first try at a skill is right, where the world leaves it open. */
export const FIRST_TRY = 0.35;
