import { source, type Source } from '../source.ts';

/** A rule of the trade, in our words, with the place it stands in. */
export interface Rule {
	readonly says: string;
	/** One at least: a rule that no document prints has the standing `practice` or `worked`. */
	readonly sources: readonly [Source, ...Source[]];
}

/** The rules of a topic, by id: `bend.setback`. */
export type Rules = Readonly<Record<string, Rule>>;

/** A place in the chapter on structural repair of the airframe handbook. */
export function airframe(at: string): Source {
	return source('airframe', `ch. 4, ${at}`);
}
