import { source, type Source } from '../source.ts';

/** A rule of the trade, in our words, with the place it stands in. */
export interface Rule {
	readonly says: string;
	readonly sources: readonly Source[];
}

/** The rules of a topic, by id: `bend.setback`. */
export type Rules = Readonly<Record<string, Rule>>;

/** A place in the chapter on structural repair of the airframe handbook. */
export function airframe(at: string): Source {
	return source('airframe', `ch. 4, ${at}`);
}
