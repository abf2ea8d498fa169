import type { CDPSession, Page } from 'playwright-core';
import { taskFromNumber } from '../../src/lib/engine/tasks/task.ts';
import { rightAnswers } from './keyboard.ts';

/** What a tab holds once all that it can let go is gone. */
interface Held {
	/** Bytes of the heap. */
	readonly heap: number;
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
	await page.getByText('Saved on this device.').or(page.locator('#question, main h1')).first().waitFor();
	let least = await heldNow(page, browser);
	for (let unchanged = 0; unchanged < still; unchanged++) {
		const now = await heldNow(page, browser);
		if (now.nodes < least.nodes || now.listeners < least.listeners) unchanged = -1;
		least = now;
	}
	return least;
}

async function heldNow(page: Page, browser: CDPSession): Promise<Held> {
	await page.evaluate(atRest);
	// What one pass lets go may hold something else.
	for (let n = 0; n < 3; n++) await browser.send('HeapProfiler.collectGarbage');
	const { usedSize } = await browser.send('Runtime.getHeapUsage');
	const { nodes, jsEventListeners } = await browser.send('Memory.getDOMCounters');
	return { heap: usedSize, nodes, listeners: jsEventListeners };
}

/** Runs in the page: waits for the longest that it puts work off, and then until it is idle. */
async function atRest(): Promise<void> {
	await new Promise((done) => setTimeout(done, 250));
	await new Promise((done) => requestAnimationFrame(() => requestIdleCallback(done)));
}

/** Runs in the page: answers the open task, goes to the next one, and returns its number. */
export async function answerHere(answers: Readonly<Record<string, string>>): Promise<string> {
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
