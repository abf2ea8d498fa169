import type { SetTask } from '$lib/engine/sets/open-set.ts';
import type { TaskSet } from '$lib/engine/sets/set.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { readCode } from '$lib/engine/sets/student-code.ts';
import { setShelf } from './shelf.svelte.ts';

/** What one student gets. */
export interface SheetOfCode {
	readonly code: string;
	readonly tasks: readonly SetTask[];
}

/** The sheet of one student of a set, or one sentence on why there is none. */
export async function sheetOfCode(set: TaskSet, typed: string): Promise<SheetOfCode | string> {
	const reading = readCode(typed);
	if (!reading.ok) return reading.sentence;
	try {
		return { code: reading.code, tasks: (await setShelf.open(set)).for(reading.code) };
	} catch (error) {
		if (error instanceof SetError) return error.message;
		throw error;
	}
}
