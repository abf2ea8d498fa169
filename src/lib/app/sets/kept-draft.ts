import { type Level, levels } from '$lib/engine/families/level.ts';
import { type TopicId, topicIds } from '$lib/engine/families/topics.ts';
import type { Terms } from '$lib/engine/sets/compose.ts';
import type { Draft } from '$lib/engine/sets/draft.ts';
import { readSet, type TaskSet } from '$lib/engine/sets/set.ts';
import { keptJson } from '../device/kept.ts';
import { keepOwn, readOwn } from '../device/own-kept.ts';

/*
 * The set that is being composed, kept on this device at every change. Every learner of a device
 * composes a set of their own.
 */

/** What was kept: the title as it stands in the field, and the set, once it has a task. */
interface KeptDraft {
	readonly title: string;
	readonly set: TaskSet | null;
	/** What its tasks were last dealt from; null where none were. */
	readonly dealt: Dealt | null;
}

/** What tasks are dealt from, as it is ticked. */
export interface Dealt {
	readonly topics: readonly TopicId[];
	readonly levels: readonly Level[];
}

export function keepDraft(terms: Terms, draft: Draft, dealt: Dealt | null): void {
	const tasks = draft.map(({ task, marks }) => ({ number: task.number, marks }));
	keepOwn('set-draft', JSON.stringify({ ...terms, tasks, dealt }));
}

/** The set that was being composed: the learner's own, or the one begun before there was a learner. */
export function readDraft(): KeptDraft {
	const raw: Readonly<Record<string, unknown>> = { ...Object(keptJson(readOwn('set-draft'))) };
	const title = typeof raw.title === 'string' ? raw.title : '';
	// A set that has no title yet is kept all the same.
	const reading = readSet({ ...raw, title: title.trim() || 'Set' });
	return { title, set: reading.ok ? reading.set : null, dealt: dealtIn(raw.dealt) };
}

function dealtIn(raw: unknown): Dealt | null {
	const { topics, levels: among }: Record<string, unknown> = { ...Object(raw) };
	if (!Array.isArray(topics) || !Array.isArray(among)) return null;
	const found = {
		topics: topicIds.filter((id) => topics.includes(id)),
		levels: levels.filter((level) => among.includes(level))
	};
	return found.topics.length > 0 && found.levels.length > 0 ? found : null;
}
