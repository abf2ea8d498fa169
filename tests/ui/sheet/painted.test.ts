import { beforeEach, expect, test, vi } from 'vitest';
import { painted } from '../../../src/lib/ui/sheet/painted.ts';

let frames: (() => void)[] = [];
const window = new EventTarget();

beforeEach(() => {
	frames = [];
	vi.useFakeTimers();
	vi.stubGlobal('document', { hidden: false });
	vi.stubGlobal('requestAnimationFrame', (call: () => void) => frames.push(call));
	vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
	vi.stubGlobal('removeEventListener', window.removeEventListener.bind(window));
	return () => {
		vi.useRealTimers();
		vi.unstubAllGlobals();
	};
});

/** Whether the wait has ended, told without ending it. */
function watched(): () => Promise<boolean> {
	let ended = false;
	void painted().then(() => (ended = true));
	return async () => {
		await vi.advanceTimersByTimeAsync(0);
		return ended;
	};
}

test('waits for the frame, and for what the frame takes', async () => {
	const hasEnded = watched();
	expect(await hasEnded()).toBe(false);
	for (const frame of frames) frame();
	expect(await hasEnded()).toBe(true);
});

test('waits no longer than a tenth of a second for a frame that does not come', async () => {
	const hasEnded = watched();
	await vi.advanceTimersByTimeAsync(99);
	expect(await hasEnded()).toBe(false);
	await vi.advanceTimersByTimeAsync(1);
	expect(await hasEnded()).toBe(true);
});

test('does not wait when the page is left, or is out of sight', async () => {
	const leaving = watched();
	window.dispatchEvent(new Event('pagehide'));
	expect(await leaving()).toBe(true);
	vi.stubGlobal('document', { hidden: true });
	expect(await watched()()).toBe(true);
});
