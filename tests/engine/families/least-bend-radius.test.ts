import { expect, test } from 'vitest';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { leastRadii } from '../../../src/lib/engine/trade/tables/least-radius.ts';
import { bendTasks, expectDrawn, sayIn } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const leastBendRadiusTasks = await familyOf('least-bend-radius');

const tasks = bendTasks(leastBendRadiusTasks);

test('drawings of many tasks', () => {
	for (const task of tasks) expectDrawn(task, ['radius', 'bar']);
});

test('the excerpt shows the wanted row with one above and one below, at no fixed place, and its column', () => {
	const places = new Set<number>();
	for (const task of tasks) {
		const T = Number(task.drawn.given.T);
		const say = sayIn(task, 'in');
		const printed = leastRadii.rows.keys[leastRadii.rows.placeOf(T)]?.[0] ?? NaN;
		const figure = task.family.figure(task.drawn.given, say);
		const sizes = figure.shapes.flatMap((shape) =>
			shape.kind === 'text' && shape.tone === 'dim' && shape.text.startsWith('0.')
				? [shape.text]
				: []
		);
		const at = sizes.indexOf(say('T', printed).replace(' in', ''));
		const words = figure.shapes.map((shape) => (shape.kind === 'text' ? shape.text : ''));
		expect(words).toContain(task.drawn.given.alloy);
		expect(words.filter((one) => /^[67]\d{3}-T6$/.test(one)).length).toBeGreaterThan(0);
		expect(at).toBeGreaterThan(0);
		expect(at).toBeLessThan(sizes.length - 1);
		places.add(at);
	}
	expect(places.size).toBeGreaterThan(1);
});

test('too sharp a radius cracks, the right one does not', () => {
	for (const task of tasks.slice(600)) {
		const least = Number(task.right.in32nds);
		const bentTo = (entered: number) => effectOf(task, 'radius', entered)?.entered;
		const cracked = (entered: number) =>
			bentTo(entered)?.drawing.shapes.some(
				(shape) => shape.kind === 'path' && shape.line === 'slip'
			);
		expect(cracked(least / 2)).toBe(true);
		expect(cracked(Number(task.right.radius))).toBe(false);
		expect(bentTo(least * 2)?.says).toMatch(/will not crack/);
	}
});

test('a sheet that shares a row is told which, and the bar is told what the decimals stand for', () => {
	const shared = new Set<string>();
	for (const { number, family, drawn, ...task } of tasks) {
		const T = Number(drawn.given.T);
		const { shapes } = family.figure(drawn.given, sayIn({ number, family, drawn, ...task }, 'in'));
		const lines = shapes.flatMap((shape) =>
			shape.kind === 'text' && shape.text.includes('stands in') ? [shape.text] : []
		);
		const [printed] = leastRadii.rows.keys[leastRadii.rows.placeOf(T)] ?? [];
		expect(lines.length, number).toBe(printed === T ? 0 : 1);
		for (const line of lines) shared.add(line);
		expect(drawn.basis?.includes('stand for 32nds'), number).toBe(drawn.asked.includes('bar'));
	}
	expect(shared).toContain('0.072 in stands in the row 0.071.');
});
