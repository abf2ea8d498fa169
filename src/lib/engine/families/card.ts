/** A family as its topic lists it: what is known before its file is loaded. */
export interface ListedCard {
	/** Two capital letters that start the task number. */
	readonly code: string;
	/** Revision: which tasks the seeds stand for; 0 to 31. */
	readonly rev: number;
	/** Id of its topic, which is also its folder. */
	readonly topic: string;
	/** Name of its file in the topic's folder. */
	readonly id: string;
	readonly name: string;
	/** In which round of topics its topic is dealt from: every third, say. Left out, in every one. */
	readonly every?: number;
}

/** Families that belong together on the pages and in an exam. */
export interface Topic<Id extends string = string> {
	readonly id: Id;
	readonly name: string;
	/** Where it comes among the topics, as a course takes them. */
	readonly place: number;
	readonly cards: readonly ListedCard[];
}

/** Code, revision, file and name of a family, in plain words. */
type Line = readonly [code: string, rev: number, id: string, name: string];

/**
 * A topic and its families, one line each. Raise a revision when an old seed would give a
 * different task. Codes and ids stand in learners' records and are never used again for something
 * else. A topic whose tasks take long is dealt from in every so many rounds only.
 */
export function topic<const Id extends string>(
	id: Id,
	name: string,
	place: number,
	families: readonly Line[],
	{ every }: Pick<ListedCard, 'every'> = {}
): Topic<Id> {
	const cards = families.map(([code, rev, file, called]) => ({
		code,
		rev,
		topic: id,
		id: file,
		name: called,
		...(every === undefined ? {} : { every })
	}));
	return { id, name, place, cards };
}
