import { late, whenIdle } from '../late.ts';
import { loadReader } from '$lib/engine/quantity/reader.ts';
import type { TaskWork } from './task-work.svelte.ts';

/*
 * What a task needs only once it is answered: loaded when it is first wanted, or when the browser
 * has nothing better to do, so that the task can be answered sooner.
 */

/** What the methods on the page tell of answers: new ones come with new tasks. */
async function told(): Promise<void> {
	const { tell } = await tellPart();
	await tell();
}

const tellPart = once(() => late(() => import('$lib/engine/families/tell.ts')));
const checking = once(() => late(() => import('./checking.ts')));
const verdict = once(() => late(() => import('./Verdict.svelte')));
const working = once(() => late(() => import('./Working.svelte')));
const talk = once(() => late(() => import('./StepTalk.svelte')));

export const wordsPart = once(() => late(() => import('../lessons/words.ts')));
export const chartsPart = once(() => late(() => import('../charts/Charts.svelte')));
export const beforePart = once(() => wide().then(() => late(() => import('./BeforeCheck.svelte'))));
export const restPart = once(() => late(() => import('./TaskRest.svelte')));
export const keysPart = once(() => late(() => import('./KeyStrip.svelte')));
export const checkPart = () => withTold(checking);
export const verdictPart = () => withTold(verdict);
export const workingPart = () => withTold(working);
export const talkPart = () => withTold(talk);

/** Resolves once the page is wide: what a phone does not show, it does not fetch. */
function wide(): Promise<unknown> {
	const query = matchMedia('(min-width: 861px)');
	return new Promise((resolve) => (query.matches ? resolve(0) : (query.onchange = resolve)));
}

async function withTold<T>(load: () => Promise<T>): Promise<T> {
	const [part] = await Promise.all([load(), told()]);
	return part;
}

/** Fetches them all when the browser is idle, so that no verdict need wait. */
export function warmUp({ task, ready }: TaskWork): void {
	const parts = () =>
		Promise.all([checkPart(), loadReader(), ready(), verdictPart(), workingPart()]);
	// What does not come now is asked for again when it is wanted, and its lack is told then.
	whenIdle(
		() =>
			void parts()
				.then(([{ prepareAll }]) => prepareAll(task))
				.catch(() => {})
	);
}

/**
 * Keeps what was loaded: an import, even of what is there, comes back in a later task only, and
 * the verdict would miss the next frame.
 */
export function once<T>(load: () => Promise<T>): () => Promise<T> {
	let loading: Promise<T> | null = null;
	return () => {
		loading ??= load();
		// What could not be fetched is asked for again next time.
		loading.catch(() => (loading = null));
		return loading;
	};
}
