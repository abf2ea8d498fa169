import type { ListedCard } from './card.ts';
import * as list from './topic-list.ts';

export type TopicId = (typeof list)[keyof typeof list]['id'];

/** What is known of a family before its file is loaded. */
export interface Card extends ListedCard {
	readonly topic: TopicId;
}

const inOrder = Object.values(list).sort((one, other) => one.place - other.place);

export const topicIds: readonly TopicId[] = inOrder.map(({ id }) => id);

/** Name of every topic, in the order a course takes them. */
export const topics = Object.fromEntries(inOrder.map(({ id, name }) => [id, name])) as Readonly<
	Record<TopicId, string>
>;

/** The card of every family, topic after topic. */
export const cards: readonly Card[] = inOrder.flatMap(({ id, cards: own }) =>
	own.map((card) => ({ ...card, topic: id }))
);

export function cardsOf(topic: TopicId): readonly Card[] {
	return cards.filter((card) => card.topic === topic);
}
