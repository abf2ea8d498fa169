import type { TopicScore } from '$lib/engine/sets/rehearsal-marks.ts';
import type { Mark } from '$lib/engine/sets/rehearsal-marks.ts';
import type { OptionCause } from '$lib/engine/sets/options.ts';
import type { Method } from '$lib/engine/solver/method.ts';

/** How a question came out, in the words of the inspector's stamp. */
export const markWords: Readonly<Record<Mark, string>> = {
	right: 'Accept',
	wrong: 'Rework',
	open: 'No answer'
};

/** What lies behind a wrong option, in one sentence for each slip. */
export function saySlips({ slips }: Method, cause: OptionCause): string {
	const said = cause.slips.map((id) => slips[id]?.says ?? '');
	return cause.kind === 'either' ? `One of two slips: ${said.join(' Or: ')}` : said.join(' And: ');
}

/** The share right, 0 to 100. */
export function share({ right, of }: Pick<TopicScore, 'right' | 'of'>): number {
	return of === 0 ? 0 : Math.round((100 * right) / of);
}
