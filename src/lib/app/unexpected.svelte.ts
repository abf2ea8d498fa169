import { NotLoaded } from '$lib/ui/late.ts';

/** Where everything ends that nobody expected: in one sentence that says what to do. */
class Unexpected {
	/** What to do about the newest of it on this page; null while nothing has happened. */
	says = $state<string | null>(null);
	#openTask: () => string | null = () => null;
	readonly #unloaded = new WeakSet<object>();

	/** Hears of what nothing else has caught on a page. */
	listen(page: Window): void {
		// Vite tells so of every import that could not be fetched, or threw.
		page.addEventListener('vite:preloadError', ({ payload }) => this.#unloaded.add(payload));
		page.addEventListener('error', ({ error }) => {
			// Without an error in it, it is not about a throw on this page.
			if (error) this.#say(error);
		});
		page.addEventListener('unhandledrejection', ({ reason }) => this.#say(reason));
	}

	/** Has the number of the open task told with what happens, until the return is called. */
	about(openTask: () => string | null): () => void {
		this.#openTask = openTask;
		return () => (this.#openTask = () => null);
	}

	/** Says on top of the page what to do about something that was caught. */
	show(error: unknown, task?: string): void {
		this.says = this.sentence(error, task);
	}

	/**
	 * The sentence alone, to stand where the person is looking.
	 *
	 * @param task number of the task it happened in; left out, the one that is open
	 * @param todo what to do, when it is not the page that could not be loaded
	 */
	sentence(error: unknown, task?: string, todo?: string): string {
		// For whoever mends it; the browser logs by itself only what was not caught.
		// eslint-disable-next-line no-console
		console.error(error);
		return this.#sentence(error, task, todo);
	}

	/** The page has gone on to something else. */
	clear(): void {
		this.says = null;
	}

	#say(error: unknown): void {
		this.says = this.#sentence(error);
	}

	#sentence(error: unknown, task = this.#openTask(), todo?: string): string {
		if (error instanceof NotLoaded || this.#unloaded.has(Object(error))) {
			return 'Part of this page could not be loaded; Bucktail may have been updated, so reload the page.';
		}
		return task === null
			? `Something went wrong on this page: ${todo ?? 'reload it and try again'}.`
			: `Something went wrong in task ${task}: ${todo ?? 'try again, or take another task'}.`;
	}
}

export const unexpected = new Unexpected();
