import { source, type Source } from '../source.ts';
import { airframe } from '../rules/rule.ts';

/** A word of the trade, explained in one sentence of our own. */
export interface Word {
	/** Its name, as it stands in a list; also the key of its drawing. */
	readonly name: string;
	/** Other ways it is written, plurals that do not end in s among them. */
	readonly also: readonly string[];
	readonly says: string;
	readonly source: Source;
}

export function word(
	name: string,
	says: string,
	where: Source | string,
	also: readonly string[] = []
): Word {
	return { name, also, says, source: typeof where === 'string' ? airframe(where) : where };
}

/** Said so in shops; no document is quoted for it. */
export const practice: Source = source('none', '', 'practice');
