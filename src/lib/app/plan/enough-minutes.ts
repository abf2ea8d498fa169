import { minutesRange } from '$lib/engine/schedule/course-settings.ts';

/** Minutes a day are tried in steps of this many. */
const step = 5;

/**
 * The least minutes a day, in steps of five, that reach every skill, or null when the most that can
 * be set do not. Every try plays the plan through, so the page gets a turn before each; trying ever
 * larger minutes keeps the tries short.
 *
 * @param reaches whether so many minutes a day reach everything
 * @param turn resolves once the page has had its turn; to false when the answer is wanted no more
 */
export async function enoughMinutes(
	from: number,
	reaches: (minutes: number) => boolean,
	turn: () => Promise<boolean>
): Promise<number | null> {
	const last = minutesRange.most / step;
	let [tooFew, enough] = [Math.floor(from / step), Math.floor(from / step) + 1];
	while (enough < last && (await turn()) && !reaches(enough * step)) {
		[tooFew, enough] = [enough, Math.min(last, enough * 2)];
	}
	if (enough >= last && (!(await turn()) || !reaches(last * step))) return null;
	while (enough - tooFew > 1 && (await turn())) {
		const middle = Math.floor((tooFew + enough) / 2);
		if (reaches(middle * step)) enough = middle;
		else tooFew = middle;
	}
	return enough * step;
}
