import type { Family } from '../../../src/lib/engine/families/family.ts';
import type { Level } from '../../../src/lib/engine/families/level.ts';
import {
	difficultyOf,
	type Features,
	featuresOf
} from '../../../src/lib/engine/tasks/difficulty.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';

/** One level of a family over many draws. */
export interface LevelAudit {
	readonly code: string;
	readonly level: Level;
	/** Tasks that differ in their numbers, in what is told or in what is asked. */
	readonly tasks: number;
	readonly stories: number;
	/** Means over the draws. */
	readonly features: Features;
	readonly difficulty: number;
	/** Whether every draw names chief slips. */
	readonly chief: boolean;
}

export const fewestTasks = 60;
export const fewestStories = 6;

/** A smaller rise from level to level is chance of the draws. */
export const leastRise = 0.25;

const drawsEach = 600;

export function auditOf(family: Family, level: Level): LevelAudit {
	const tasks = Array.from({ length: drawsEach }, (_, i) => drawTask(family, level, i * 1747));
	const features = meanOf(tasks.map(featuresOf));
	const { method } = family;
	return {
		code: family.code,
		level,
		tasks: new Set(
			tasks.map(({ drawn: { given, asked, told, question, labels } }) =>
				JSON.stringify([method.id, given, asked, told ?? [], question, labels ?? {}])
			)
		).size,
		stories: new Set(tasks.map(({ drawn }) => drawn.story)).size,
		features,
		difficulty: difficultyOf(features),
		chief: tasks.every(({ drawn }) => Object.keys(drawn.chief ?? {}).length > 0)
	};
}

function meanOf(all: readonly Features[]): Features {
	const mean = (key: keyof Features) =>
		all.reduce((sum, features) => sum + features[key], 0) / Math.max(1, all.length);
	return {
		steps: mean('steps'),
		lookUps: mean('lookUps'),
		conversions: mean('conversions'),
		digits: mean('digits'),
		distractors: mean('distractors')
	};
}
