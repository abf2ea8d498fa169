import { describe, expect, onTestFinished, test } from 'vitest';
import { loadFamily, cardByCode } from '../../../src/lib/engine/families/catalogue.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import type { Entry } from '../../../src/lib/engine/marking/verdict.ts';
import { World } from '../../../src/lib/engine/marking/world.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { compiledOf, setReady } from '../../../src/lib/engine/solver/compiled.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';

await loadReader();
const card = cardByCode('PN');
if (!card) throw new Error('no panels');
const panel = drawTask(await loadFamily(card), 3, 4);
const { asked } = panel.drawn;

/** Numbers that nobody comes to, one for each field. */
const nonsense = ['.137', '1.913', '.771', '.313', '.417', '.859', '.613', '77', '3.333', '911'];

function entries(keys: readonly string[]): Record<string, Entry> {
	return Object.fromEntries(
		keys.map((key) => {
			const entry = entryOf(
				readAnswer(panel.method, key, nonsense[asked.indexOf(key)] ?? '', 'in')
			);
			if (!entry) throw new Error(`not read: ${key}`);
			return [key, entry];
		})
	);
}

/** How often a method is worked, wholly or in part, while something is done. */
function workedIn(method: Method, act: () => void): number {
	const ready = compiledOf(method);
	let worked = 0;
	setReady(method, {
		...ready,
		copy: (values) => {
			worked += 1;
			return ready.copy(values);
		}
	});
	onTestFinished(() => {
		setReady(method, ready);
	});
	act();
	return worked;
}

describe('a panel filled with nonsense', () => {
	test('asks for ten numbers and has more than a hundred slips', () => {
		expect(asked).toHaveLength(nonsense.length);
		expect(Object.keys(panel.method.slips).length).toBeGreaterThan(100);
	});

	test('is marked with the method worked some hundred times, not once for every two slips', () => {
		const worked = workedIn(panel.method, () => {
			expect(Object.keys(mark(panel, entries(asked)))).toEqual(asked);
		});
		expect(worked).toBeGreaterThan(200);
		expect(worked).toBeLessThan(1500);
	});

	test('works two slips together only where both can change the entry', () => {
		const one = (key: string) => workedIn(panel.method, () => mark(panel, entries([key])));
		// Before the diameter stand two steps; the total comes last.
		expect(one('diameter')).toBeLessThan(250);
		expect(one('total')).toBeLessThan(1500);
	});
});

describe('the world of a task', () => {
	test('is worked once for all checks of a task', () => {
		mark(panel, entries(['diameter']));
		const first = workedIn(panel.method, () => World.of(panel));
		expect(first).toBe(0);
		expect(World.of(panel)).toBe(World.of(panel));
		expect(World.of({ ...panel })).not.toBe(World.of(panel));
	});
});
