import type { DayRecall, MeanRecall } from '$lib/engine/schedule/history.ts';
import { topicWords } from './words.ts';

/** The share of the steps expected to be right, over time, of one topic or of all: as the plan counts it. */
export interface Series {
	readonly name: string;
	/** In the order of time, from the first day with a step met; from 0 to 1, a step not met counting as not right. */
	readonly points: readonly { readonly day: number; readonly recall: number }[];
	/** Steps met by the last day, and steps that there are. */
	readonly met: number;
	readonly steps: number;
}

/**
 * One series for each topic of which a step has been met; before them one for all topics, when
 * there is more than one.
 *
 * @param steps how many steps each topic has
 */
export function seriesOf(
	days: readonly DayRecall[],
	steps: ReadonlyMap<string, number>
): readonly Series[] {
	const topics = [...steps].map(([topic, count]) =>
		series(topicWords(topic), count, days, (day) => day.topics.get(topic))
	);
	const met = topics.filter(({ points }) => points.length > 0);
	if (met.length < 2) return met;
	const all = [...steps.values()].reduce((sum, count) => sum + count, 0);
	return [series('All topics', all, days, (day) => day.all), ...met];
}

/** Names of the topics of which no step has been met. */
export function unmetTopics(
	days: readonly DayRecall[],
	steps: ReadonlyMap<string, number>
): string[] {
	const met = days.at(-1)?.topics;
	return [...steps.keys()].filter((topic) => !met?.has(topic)).map(topicWords);
}

function series(
	name: string,
	steps: number,
	days: readonly DayRecall[],
	of: (day: DayRecall) => MeanRecall | undefined
): Series {
	const points = days.flatMap((day) => {
		const mean = of(day);
		if (!mean || mean.met === 0) return [];
		return [{ day: day.day, met: mean.met, recall: (mean.recall * mean.met) / steps }];
	});
	return { name, points, met: points.at(-1)?.met ?? 0, steps };
}
