import { readSet, setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { device } from '../device/device.svelte.ts';
import { keep, keptJson, readKept } from '../device/kept.ts';

/* Sets that are on their way to the log: a page may be left before they have come there. */

const key = 'bucktail.sets-under-way';

interface UnderWay {
	/** Null where the set is to make the first learner here. */
	readonly learner: string | null;
	readonly set: TaskSet;
}

/** Those of the learner at work. */
export function setsUnderWay(): TaskSet[] {
	const own = ({ learner }: UnderWay) => learner === null || learner === device.learnerId;
	return all()
		.filter(own)
		.map(({ set }) => set);
}

export function keepUnderWay(set: TaskSet): void {
	keepAll([...without(set), { learner: device.learnerId, set }]);
}

export function dropUnderWay(set: TaskSet): void {
	keepAll(without(set));
}

function without(set: TaskSet): UnderWay[] {
	return all().filter((one) => setHash(one.set) !== setHash(set));
}

function all(): UnderWay[] {
	const kept = keptJson(readKept(key));
	return (Array.isArray(kept) ? kept : []).flatMap((raw) => {
		const { learner, set }: Record<string, unknown> = { ...Object(raw) };
		const reading = readSet(set);
		return reading.ok
			? [{ learner: typeof learner === 'string' ? learner : null, set: reading.set }]
			: [];
	});
}

function keepAll(sets: readonly UnderWay[]): void {
	keep(key, sets.length === 0 ? null : JSON.stringify(sets));
}
