import type { Random } from '../../random.ts';

/** Degrees from flat: parts are opened or closed a little from square more often than far. */
const opened = [30, 45, 60, 75, 75, 80, 80, 100, 100, 105, 105, 120, 135];

/** A bend that is not square. */
export function openedBend(random: Random, most = Infinity): number {
	return random.pick(opened.filter((angle) => angle <= most));
}
