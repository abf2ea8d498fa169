import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import type { Draw } from '../../../src/lib/engine/families/family.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { givensOf, numbersIn } from '../../../src/lib/engine/tasks/givens.ts';

const [family] = await loadFamilies();
if (!family) throw new Error('no family');
const task = drawTask(family, 2, 1);

function withDraw(drawn: Partial<Draw>, level = task.id.level): Task {
	return { ...task, id: { ...task.id, level }, drawn: { ...task.drawn, ...drawn } };
}

describe('the numbers of a task as text', () => {
	const text = givensOf(task);

	test('are the same at another level and under another seed and story', () => {
		const other = withDraw({ story: 'Another joint.' }, 3);
		expect(givensOf({ ...other, id: { ...other.id, seed: 99 } })).toBe(text);
	});

	test('differ for other numbers, another question and other things told', () => {
		expect(givensOf(withDraw({ given: { ...task.drawn.given, T: 0.0401 } }))).not.toBe(text);
		expect(givensOf(withDraw({ asked: ['other'] }))).not.toBe(text);
		expect(givensOf(withDraw({ told: [['Head', 'countersunk']] }))).not.toBe(text);
	});

	test('hold the numbers apart from the question', () => {
		expect(numbersIn(givensOf(withDraw({ asked: ['other'] })))).toBe(numbersIn(text));
		expect(numbersIn(givensOf(withDraw({ given: { T: 9 } })))).not.toBe(numbersIn(text));
		expect(numbersIn('from elsewhere')).toBe('from elsewhere');
	});

	test('fit the log, however many they are, and still differ', () => {
		const many = (last: number) => withDraw({ given: { layers: [...Array(90).keys(), last] } });
		expect(givensOf(many(1)).length).toBeLessThanOrEqual(300);
		expect(givensOf(many(1))).not.toBe(givensOf(many(2)));
		expect(givensOf(many(1))).toBe(givensOf(many(1)));
	});
});

test('two tasks have the same text only when they give and ask the same', async () => {
	for (const one of await loadFamilies()) {
		const seen = new Map<string, string>();
		for (const level of levels) {
			for (let seed = 0; seed < 100; seed++) {
				const drawn = drawTask(one, level, seed * 11);
				const whole = JSON.stringify([drawn.drawn.given, drawn.drawn.asked, drawn.drawn.told]);
				const text = givensOf(drawn);
				expect(seen.get(text) ?? whole).toBe(whole);
				seen.set(text, whole);
			}
		}
		expect(new Set(seen.values()).size).toBe(seen.size);
	}
});
