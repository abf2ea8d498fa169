import { dayOf } from './day.ts';
import type { Attempt, KnownEvent } from './event.ts';
import { standing } from './learning.ts';
import type { Evidence } from './memory.ts';

/** What was done of one run on one day. */
export interface Sitting {
	/** Id of its newest attempt. */
	readonly id: string;
	readonly day: number;
	readonly source: Attempt['source'];
	/** Codes of the families its tasks come from. */
	readonly families: readonly string[];
	/** Tasks by how they stood in the end. */
	readonly right: number;
	readonly helped: number;
	readonly wrong: number;
	/** The same one by one, in the order in which they were begun. */
	readonly standings: readonly Evidence[];
	readonly seconds: number;
}

/**
 * The sittings of a log that is read newest first, newest first too. Each is given as soon as an
 * earlier day is reached, so that the log is read only as far as it is asked for.
 */
export async function* sittingsOf(events: AsyncIterable<KnownEvent>): AsyncGenerator<Sitting> {
	let day: string | undefined;
	let runs: Groups = new Map();
	for await (const event of events) {
		if (event.type !== 'attempt') continue;
		if (event.day !== day) {
			for (const attempts of runs.values()) yield sittingOf(attempts);
			[day, runs] = [event.day, new Map()];
		}
		gather(runs, event.runId, event);
	}
	for (const attempts of runs.values()) yield sittingOf(attempts);
}

/** Attempts by what they have in common, newest first. */
type Groups = Map<string, [Attempt, ...Attempt[]]>;

function gather(groups: Groups, key: string, attempt: Attempt): void {
	const group = groups.get(key);
	if (group) group.push(attempt);
	else groups.set(key, [attempt]);
}

function sittingOf(attempts: readonly [Attempt, ...Attempt[]]): Sitting {
	const tasks: Groups = new Map();
	for (const attempt of attempts) gather(tasks, attempt.task, attempt);
	const begun = [...tasks.values()].sort(
		(a, b) => attempts.indexOf(first(b)) - attempts.indexOf(first(a))
	);
	const standings = begun.map(outcome).filter((one) => one !== null);
	const count = (wanted: Evidence) => standings.filter((one) => one === wanted).length;
	const { id, day, source } = attempts[0];
	return {
		id,
		day: dayOf(day),
		source,
		families: [...new Set([...tasks.keys()].map((task) => task.slice(0, 2)))],
		right: count('right'),
		helped: count('helped'),
		wrong: count('wrong'),
		standings,
		seconds: attempts.reduce((sum, { seconds }) => sum + seconds, 0)
	};
}

/** The first attempt of those that stand newest first. */
function first(newestFirst: readonly [Attempt, ...Attempt[]]): Attempt {
	return newestFirst.at(-1) ?? newestFirst[0];
}

/**
 * How a task stood in the end: right at once, or right at last, or not, as the run itself has it
 * (`practice/noting.ts`); null where it was left after right steps, and not finished.
 */
function outcome(newestFirst: readonly [Attempt, ...Attempt[]]): Evidence | null {
	const [last] = newestFirst;
	if (last.part) return newestFirst.some((one) => standing(one) === 'wrong') ? 'wrong' : null;
	// Of laid-out steps, each is an attempt, and one that is wrong is a miss of the task.
	const slipped = newestFirst.some((one) => one.guided && standing(one) !== 'right');
	const one = first(newestFirst);
	if (standing(one) === 'right' && !one.worked && !slipped) return 'right';
	return standing(last) === 'wrong' || last.worked ? 'wrong' : 'helped';
}
