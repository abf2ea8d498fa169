export const topics = {
	rivets: 'Rivets',
	layout: 'Edge distance and layout',
	bends: 'Bends',
	cutting: 'Cutting',
	holes: 'Holes and drills'
} as const;

export type TopicId = keyof typeof topics;

export const topicIds = Object.keys(topics) as readonly TopicId[];

/** What is known of a family before its file is loaded. */
export interface Card {
	/** Two capital letters that start the task number. */
	readonly code: string;
	/** Revision: which tasks the seeds stand for. */
	readonly rev: number;
	readonly topic: TopicId;
	/** Name of its file in the topic's folder. */
	readonly id: string;
	readonly name: string;
}

export function listed(code: string, rev: number, topic: TopicId, id: string, name: string): Card {
	return { code, rev, topic, id, name };
}
