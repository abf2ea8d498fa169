import { counted } from '../counted.ts';

/** A time in whole minutes, begun ones counted. */
export function minutesWords(seconds: number): string {
	return counted(Math.ceil(seconds / 60 - 1e-9), 'minute');
}

/** A time that was used, to the nearest minute. */
export function usedWords(seconds: number): string {
	return minutesWords(60 * Math.max(1, Math.round(seconds / 60)));
}

/** What is left of the time: minutes, and the seconds of the last two. */
export function leftWords(seconds: number): string {
	if (seconds > 120) return `${minutesWords(seconds)} left`;
	return `${counted(Math.ceil(seconds), 'second')} left`;
}

/** Times left, in seconds, at which somebody who cannot see the clock is told. */
const toldAt = [60, 300, 600, 1200, 1800];

/**
 * What a screen reader is told of the time: the same words until the next of a few times is
 * reached, so that it does not speak all the while. Empty before the first.
 */
export function toldWords(seconds: number, length: number): string {
	const told = toldAt.find((one) => seconds <= one && one < length);
	return told === undefined || seconds <= 0 ? '' : `${minutesWords(told)} left.`;
}

/** A day as it is spoken of: 3 December. */
export function dateWords(at: number): string {
	return new Date(at).toLocaleDateString('en-GB', { day: 'numeric', month: 'long' });
}
