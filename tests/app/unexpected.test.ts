import { beforeEach, describe, expect, test, vi } from 'vitest';
import { late } from '../../src/lib/ui/late.ts';
import { unexpected } from '../../src/lib/app/unexpected.svelte.ts';

const error = new Error('planted');
const task = 'RL1-00C8-8D';
const page = new EventTarget();

unexpected.listen(page as Window);

/** Has the page tell of something, as a browser does. */
function happen(type: string, told: object): void {
	page.dispatchEvent(Object.assign(new Event(type), told));
}

beforeEach(() => {
	unexpected.clear();
	vi.spyOn(console, 'error').mockImplementation(() => {});
});

describe('what nothing else caught is told', () => {
	test.each([
		['a throw', 'error', { error }],
		['a rejection', 'unhandledrejection', { reason: error }],
		['a rejection with nothing in it', 'unhandledrejection', { reason: undefined }]
	])('%s', (_, type, told) => {
		happen(type, told);
		expect(unexpected.says).toBe('Something went wrong on this page: reload it and try again.');
	});

	test('with the number of the task that is open then', () => {
		let open: string | null = null;
		const end = unexpected.about(() => open);
		open = task;
		happen('error', { error });
		expect(unexpected.says).toBe(
			`Something went wrong in task ${task}: try again, or take another task.`
		);
		end();
		happen('error', { error });
		expect(unexpected.says).not.toContain(task);
	});

	test('but not an event of the browser that is no throw', () => {
		happen('error', { error: null, message: 'ResizeObserver loop limit exceeded' });
		expect(unexpected.says).toBeNull();
	});
});

test('what could not be loaded asks for a reload, and no network is blamed', () => {
	const missing = new TypeError('Failed to fetch dynamically imported module');
	happen('vite:preloadError', { payload: missing });
	expect(unexpected.says).toBeNull();
	happen('unhandledrejection', { reason: missing });
	expect(unexpected.says).toMatch(/could not be loaded.*updated.*reload the page\.$/);
	expect(unexpected.says).not.toContain('network');
	expect(unexpected.sentence(missing, task, 'do this')).toBe(unexpected.says);
});

test('a late part that fails asks for the same, and keeps its cause', async () => {
	const cause = new TypeError('planted');
	const thrown = await late(() => Promise.reject(cause)).catch((error: unknown) => error);
	happen('unhandledrejection', { reason: thrown });
	expect(unexpected.says).toMatch(/could not be loaded.*reload the page\.$/);
	expect(thrown).toMatchObject({ cause });
	expect(await late(async () => 1)).toBe(1);
});

test('what was caught is in the console, and can be told in its place', () => {
	expect(unexpected.sentence(error, task, 'do this')).toBe(
		`Something went wrong in task ${task}: do this.`
	);
	expect(unexpected.says).toBeNull();
	expect(console.error).toHaveBeenCalledWith(error);
	unexpected.show(error, task);
	expect(unexpected.says).toContain(task);
});
