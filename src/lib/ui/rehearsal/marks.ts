import type { TopicScore } from '$lib/engine/sets/rehearsal-marks.ts';
import type { Mark } from '$lib/engine/sets/rehearsal-marks.ts';
import { type OptionCause, severalSlips } from '$lib/engine/sets/options.ts';
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
	if (cause.kind === 'slip') return said.join(' And: ');
	if (said.length >= severalSlips) return 'Several slips lead here: work it step by step.';
	return `One of ${said.length === 2 ? 'two' : 'three'} slips: ${said.join(' Or: ')}`;
}

/** The share right, 0 to 100. */
export function share({ right, of }: Pick<TopicScore, 'right' | 'of'>): number {
	return of === 0 ? 0 : Math.round((100 * right) / of);
}
