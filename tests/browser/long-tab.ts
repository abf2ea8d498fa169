import type { CDPSession, Page } from 'playwright-core';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { rightAnswers } from './keyboard.ts';

/** What a tab holds once all that it can let go is gone. */
export interface Held {
	/** Bytes of the script's values, without the machine code that the browser makes of it as it runs. */
	readonly values: number;
	/** Nodes in memory, in the page or not. */
	readonly nodes: number;
	readonly listeners: number;
}

/** Goes through the open task and those after it without a reload, as many as that. */
export async function answerTasks(page: Page, count: number): Promise<void> {
	await page.locator('#question').waitFor();
	let number = new URL(page.url()).searchParams.get('task') ?? '';
	for (let n = 0; n < count; n++) {
		const answers = rightAnswers(await taskFromNumber(number));
		number = await page.evaluate(answerHere, answers);
	}
}

/** Readings in a row that must find nothing more let go. */
const still = 4;

/**
 * What the page holds once it has come to rest: what is drawn late, waits for the log or for an idle
 * moment holds the task before until then, on a busy machine for seconds.
 */
export async function held(page: Page, browser: CDPSession): Promise<Held> {
	await page.locator('#question, main h1').first().waitFor();
	let least = await counted(page, browser);
	for (let unchanged = 0; unchanged < still; unchanged++) {
		const now = await counted(page, browser);
		if (now.nodes < least.nodes || now.listeners < least.listeners) unchanged = -1;
		least = now;
	}
	return { ...least, values: await bytesOfValues(browser) };
}

async function counted(page: Page, browser: CDPSession): Promise<Omit<Held, 'values'>> {
	await page.evaluate(atRest);
	// What one pass lets go may hold something else.
	for (let n = 0; n < 3; n++) await browser.send('HeapProfiler.collectGarbage');
	const { nodes, jsEventListeners } = await browser.send('Memory.getDOMCounters');
	return { nodes, listeners: jsEventListeners };
}

/** The part of a heap snapshot that is read here. */
interface Snapshot {
	readonly snapshot: {
		readonly meta: { readonly node_fields: string[]; readonly node_types: [string[]] };
	};
	readonly nodes: readonly number[];
}

/** Types of heap nodes that are no values of the script. */
const notValues = new Set(['code', 'native', 'synthetic', 'hidden']);

async function bytesOfValues(browser: CDPSession): Promise<number> {
	const chunks: string[] = [];
	const take = ({ chunk }: { chunk: string }) => void chunks.push(chunk);
	browser.on('HeapProfiler.addHeapSnapshotChunk', take);
	await browser.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
	browser.off('HeapProfiler.addHeapSnapshotChunk', take);
	const { snapshot, nodes }: Snapshot = JSON.parse(chunks.join(''));
	const { node_fields: fields, node_types: types } = snapshot.meta;
	const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
	let bytes = 0;
	for (let at = 0; at < nodes.length; at += fields.length) {
		const name = types[0][nodes[at + type] ?? 0] ?? '';
		if (!notValues.has(name)) bytes += nodes[at + size] ?? 0;
	}
	return bytes;
}

/** Runs in the page: waits for the longest that it puts work off, and then until it is idle. */
async function atRest(): Promise<void> {
	await new Promise((done) => setTimeout(done, 250));
	await new Promise((done) => requestAnimationFrame(() => requestIdleCallback(done)));
}

/** Goes through the rest of a run of the plan, to its end. */
export async function finishRun(page: Page): Promise<number> {
	await page.waitForURL(/[?&]task=/);
	const numberIn = (address: string) => new URL(address).searchParams.get('task');
	let tasks = 0;
	for (let number = numberIn(page.url()); number !== null; tasks++) {
		const next = await page.evaluate(answerHere, rightAnswers(await taskFromNumber(number)));
		number = next.startsWith('/') ? null : next;
	}
	return tasks;
}

/**
 * Runs in the page: answers the open task, goes to the next one, and returns its number, or the path
 * of the page that a run ends on.
 */
async function answerHere(answers: Readonly<Record<string, string>>): Promise<string> {
	const number = () => new URL(location.href).searchParams.get('task') ?? '';
	const until = async <T>(look: () => T | null | undefined | false): Promise<T> => {
		for (let tries = 0; tries < 20_000; tries++) {
			const found = look();
			if (found) return found;
			await new Promise((done) => setTimeout(done, 5));
		}
		throw new Error(`${number()} does not go on: ${look.toString()}`);
	};
	const one = <T extends HTMLElement>(selector: string) => document.querySelector<T>(selector);
	const button = (name: string) =>
		[...document.querySelectorAll('button')].find(
			({ textContent }) => textContent?.trim() === name
		);
	const next = () => {
		const before = number();
		one('[data-next]')?.click();
		return until(() => number() !== before && (number() || location.pathname));
	};
	// A kind that is new is shown worked first, and then talked through.
	const isShown = () => /^\s*Now /.test(one('[data-next]')?.textContent ?? '');
	const isThere = () => one('[data-answer], [data-answer-choice]') !== null;
	await until(() => isShown() || isThere());
	if (isShown()) return next();
	if (one('.topic')?.textContent?.includes('step by step')) {
		(await until(() => button('Back to the whole task'))).click();
		await until(() => !button('Back to the whole task'));
	}
	for (const [key, answer] of Object.entries(answers)) {
		const choice = `fieldset[data-answer-choice="${key}"] input[value="${answer}"]`;
		const field = await until(
			() => one<HTMLInputElement>(choice) ?? one<HTMLInputElement>(`[data-answer="${key}"]`)
		);
		if (field.matches(choice)) field.click();
		else {
			field.value = answer;
			field.dispatchEvent(new Event('input', { bubbles: true }));
		}
	}
	button('Check')?.click();
	await until(() => one('.stamp')?.textContent?.includes('ACCEPT'));
	return next();
}
