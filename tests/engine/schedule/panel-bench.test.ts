import { describe, expect, test } from 'vitest';
import { type KnownEvent, readEvent } from '../../../src/lib/engine/schedule/event.ts';
import { panelsOf } from '../../../src/lib/engine/schedule/panel-bench.ts';

const learner = '7d3f5f3e-6a0e-4c1b-9f0a-0d6b3a4c2e11';
const [one, two] = ['1', '2'].map((last) => `7d3f5f3e-6a0e-4c1b-9f0a-0d6b3a4c2e2${last}`);
let number = 0;

function event(facts: object): KnownEvent {
	number += 1;
	const id = `7d3f5f3e-6a0e-4c1b-9f0a-${String(number).padStart(12, '0')}`;
	const raw = { id, v: 1, learner, at: number, day: '2026-11-26', ...facts };
	expect(readEvent(raw).ok).toBe(true);
	return raw as unknown as KnownEvent;
}

const panel = (id: string | undefined, file: string) => event({ type: 'panel', panel: id, file });
const tick = (id: string | undefined, holes: string[], done = true) =>
	event({ type: 'panel-tick', panel: id, stage: 'pilot', holes, done });

describe('panels in the log', () => {
	test('the newest file of each counts, and the panel last changed stands first', () => {
		const found = panelsOf([panel(one, '{"a":1}'), panel(two, '{}'), panel(one, '{"a":2}')]);
		expect(found.map(({ id, file }) => [id, file])).toEqual([
			[one, '{"a":2}'],
			[two, '{}']
		]);
	});

	test('ticks gather, may be taken back, and outlast a change of the panel', () => {
		const [found] = panelsOf([
			panel(one, '{}'),
			tick(one, ['6.000 1.000', '6.000 2.000']),
			tick(two, ['9.000 9.000']),
			tick(one, ['6.000 1.000'], false),
			panel(one, '{"b":1}')
		]);
		expect([...(found?.done.pilot ?? [])]).toEqual(['6.000 2.000']);
		expect(found?.done.drive.size).toBe(0);
	});

	test('a panel without a file was removed', () => {
		expect(panelsOf([panel(one, '{}'), panel(one, '')])).toEqual([]);
	});
});
