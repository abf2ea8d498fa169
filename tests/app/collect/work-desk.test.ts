import { afterEach, expect, test, vi } from 'vitest';
import { WorkDesk } from '../../../src/lib/app/collect/work-desk.ts';

afterEach(() => vi.unstubAllGlobals());

test('a worker that does not start is done without, for the next work too', async () => {
	const posted: unknown[] = [];
	class Broken extends EventTarget {
		postMessage(asked: unknown) {
			if (posted.length === 0) queueMicrotask(() => this.dispatchEvent(new Event('error')));
			posted.push(asked);
		}
	}
	vi.stubGlobal('Worker', Broken);
	const desk = new WorkDesk();
	const part = (name: string) => [{ name, text: 'no hand-in' }];
	await desk.run('hold', [part('a')]);
	await desk.run('hold', [part('b')]);
	const { aside } = await desk.run('gather', [[]]);
	expect(aside.map(({ file }) => file)).toEqual(['a', 'b']);
	expect(posted).toHaveLength(1);
});
