/*
 * A date in words without the browser's own: its first one takes 20 ms and more on a slow phone, in
 * which the first task could be drawn.
 */

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sept Oct Nov Dec'.split(' ');

/** `11 Dec`, `4 Sept`: a month from 0, as dates count them. */
export function dayMonth(date: number, month: number): string {
	return `${date} ${months[month]}`;
}

/** Today on this device, `11 Dec`. */
export function todayWords(): string {
	const now = new Date();
	return dayMonth(now.getDate(), now.getMonth());
}
