/** A share, 0 to 1, as people say it. */
export function inHundred(share: number): number {
	return Math.round(share * 100);
}

/** `1 task`, `8 tasks` */
export function taskCount(tasks: number): string {
	return `${tasks} ${tasks === 1 ? 'task' : 'tasks'}`;
}

/** `about 1 minute`, `about 22 minutes` */
export function aboutMinutes(minutes: number): string {
	const whole = Math.max(1, Math.round(minutes));
	return `about ${whole} ${whole === 1 ? 'minute' : 'minutes'}`;
}
