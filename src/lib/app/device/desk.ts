import { courseFold, courseKey } from '$lib/engine/schedule/course-fold.ts';
import type { CourseSettings } from '$lib/engine/schedule/course-settings.ts';
import { type Learning, learningFold } from '$lib/engine/schedule/learning.ts';
import { foldState } from '$lib/storage/fold.ts';
import { firstLearner, type Learner, listLearners, useLearner } from '$lib/storage/learners.ts';
import type { KnownEvent } from '$lib/engine/schedule/event.ts';
import { append, events, merge } from '$lib/storage/log.ts';
import { type FactsOf, stamped } from '$lib/storage/stamp.ts';
import { openStore, type Store } from '$lib/storage/store.ts';
import { answered, type Trouble, troubleSentences } from '$lib/storage/trouble.ts';
import type { AttemptFacts, SettledAttempt } from './device.svelte.ts';

export { sentenceFor } from '$lib/storage/trouble.ts';

/** The open store with what the pages do with it. Loaded on demand: see `device`. */
export interface Desk {
	readonly store: Store;
	learners(): Promise<Learner[]>;
	/** What the log of a learner comes to; of nobody yet, when there is no learner. */
	learning(learner: string | undefined): Promise<Learning>;
	course(learner: string): Promise<CourseSettings | null>;
	attempt(learner: string, facts: AttemptFacts): Promise<void>;
	/** Adds those that are not in the log yet by their id, all or none. */
	attempts(learner: string, attempts: readonly SettledAttempt[]): Promise<void>;
	setCourse(learner: string, course: CourseSettings): Promise<void>;
	/** Adds an event of any type. */
	note<T extends KnownEvent['type']>(learner: string, facts: FactsOf<T>): Promise<void>;
	/** Adds several events of a type, all or none. */
	noteAll<T extends KnownEvent['type']>(
		learner: string,
		facts: readonly FactsOf<T>[]
	): Promise<void>;
	/** A learner's events of the types that are wanted, oldest first. */
	eventsOf(learner: string, wanted: (type: string) => boolean): Promise<KnownEvent[]>;
	use(learner: string): Promise<void>;
	/** What to say when the learner at work was removed in another tab. */
	readonly removedSentence: string;
	/** The first learner of a device, added under a plain name that can be changed. */
	firstLearner(): Promise<string>;
}

/** Every fold the app reads; their caches are kept up to date with each attempt. */
export const folds = [learningFold, courseFold];

export async function openDesk(options: {
	onTrouble: (sentence: string) => void;
	/** Hears how far a lost log is put back from its copy. */
	onRecovered: (done: number, all: number) => void;
	onChange: (learners: readonly string[]) => void;
}): Promise<Desk> {
	const onTrouble = (trouble: Trouble) => options.onTrouble(troubleSentences[trouble]);
	const { onRecovered } = options;
	const store = await openStore({ folds, onTrouble, onRecovered });
	/** Writes what somebody just did: that takes no time unless the store stands still. */
	const written = (work: Promise<unknown>) => answered(work, onTrouble).then(() => {});
	store.onChange(options.onChange);
	return {
		store,
		learners: () => listLearners(store),
		learning: async (learner) =>
			learner === undefined
				? structuredClone(learningFold.empty)
				: foldState(store, learningFold, learner),
		course: (learner) => foldState(store, courseFold, learner),
		attempt: (learner, facts) =>
			written(append(store, stamped(learner, { type: 'attempt', ...facts }))),
		attempts(learner, attempts) {
			const events = attempts.map(({ id, at, facts }) => ({
				...stamped(learner, { type: 'attempt', ...facts }, new Date(at)),
				id
			}));
			return written(merge(store, events));
		},
		setCourse: (learner, course) =>
			written(
				append(store, stamped(learner, { type: 'setting', key: courseKey, value: { ...course } }))
			),
		note: (learner, facts) => written(append(store, stamped(learner, facts))),
		noteAll: (learner, facts) =>
			written(
				merge(
					store,
					facts.map((one) => stamped(learner, one))
				)
			),
		async eventsOf(learner, wanted) {
			const found: KnownEvent[] = [];
			for await (const event of events(store, learner, { of: wanted })) found.push(event);
			return found;
		},
		use: (learner) => useLearner(store, learner),
		removedSentence: troubleSentences.removed,
		firstLearner: async () => (await firstLearner(store, 'Learner 1')).id
	};
}
