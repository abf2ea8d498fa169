import { type OpenSet, openSet } from '../../../lib/engine/sets/open-set.ts';
import { readCode } from '../../../lib/engine/sets/student-code.ts';
import { readSetLink } from '../../../lib/exchange/set-link.ts';
import { UsageError } from '../../usage-error.ts';

/** Where `npm start` serves the pages when nothing else is in the way. */
export const ownAddress = 'http://localhost:4173/';

/**
 * The set of the one link among the arguments.
 *
 * @throws UsageError, SetError
 */
export async function setIn(args: readonly string[]): Promise<{ open: OpenSet; link: string }> {
	const [link, more] = args;
	if (link === undefined || more !== undefined) {
		throw new UsageError('Give one set link, in quotation marks; bucktail set new makes one.');
	}
	const reading = await readSetLink(link);
	if (!reading.ok) throw new UsageError(reading.sentence);
	return { open: await openSet(reading.set), link: link.trim() };
}

/** @throws UsageError */
export function codeIn(typed: string): string {
	const reading = readCode(typed);
	if (!reading.ok) throw new UsageError(reading.sentence);
	return reading.code;
}
