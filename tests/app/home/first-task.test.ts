import { expect, test } from 'vitest';
import { firstAnswer } from '../../../src/lib/app/home/first-answer.ts';
import { askedBy, binOf, firstTask } from '../../../src/lib/app/home/first-task.ts';
import { tell } from '../../../src/lib/engine/families/tell.ts';
import {
	askedRivet,
	drivenAsked,
	places
} from '../../../src/lib/engine/figures/parts/rivet-asked.ts';
import { boundsOf } from '../../../src/lib/engine/figures/to-svg.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { TaskWork } from '../../../src/lib/ui/sheet/task-work.svelte.ts';

await loadReader();
await tell();
const task = firstTask();

async function answered(needed: string, taken: string) {
	const work = new TaskWork(task, () => 'in');
	work.lines[0]?.type(needed);
	work.lines[1]?.type(taken);
	const check = await work.check();
	return check && firstAnswer(task, check, 'in');
}

test('the right rivet is in the bin, and two shorter ones', () => {
	const good = Number(task.right.length) * 16;
	expect(binOf(task).map(({ sixteenths }) => sixteenths - good)).toEqual([-2, -1, 0, 1, 2, 3]);
	expect(binOf(task)[1]?.written).toBe('1/4');
});

test('a narrow drawing names its layers without their unit', () => {
	expect(askedBy(task, 'in', true).names).toEqual(['plate 0.040', 'frame 0.025']);
	expect(askedBy(task, 'mm', true).names).toEqual(['plate 1.016', 'frame 0.635']);
	expect(askedBy(task, 'mm').names[0]).toBe('access plate 1.016 mm');
});

test.each([
	['.040+.025+1.5*1/8', 'in', 'That is 0.2525 in.'],
	['1/3+.1', 'in', 'That is about 0.4333 in.'],
	['5/16', 'in', 'Read as 5/16 in, a −5 length.']
] as const)(
	'%s is read back in a sentence',
	async (text, units, says) => {
		const line = new TaskWork(task, () => units).lines[1];
		line?.type(text);
		// The first sum loads what works it.
		await expect.poll(() => line?.says, { timeout: 20_000 }).toBe(says);
	},
	25_000
);

test.each(binOf(task))('$written in is marked, told and drawn in its place', async (one) => {
	const answer = await answered('.2525', `${one.written} in`);
	const good = one.sixteenths === Number(task.right.length) * 16;
	expect(answer?.verdict).toBe(good ? 'accept' : 'rework');
	expect(answer?.metal).not.toBe('');
	expect(answer?.why).not.toContain('work the steps');
	for (const where of ['wide', 'narrow'] as const) {
		const asked = askedBy(task, 'in', where === 'narrow');
		const { width, height } = places[where];
		const drawing = answer?.driven && drivenAsked(asked, answer.driven, where);
		const shapes = drawing ? [...drawing.still, ...drawing.shank, ...drawing.shopHead] : [];
		for (const drawn of [shapes, askedRivet(asked, where)]) {
			const box = boundsOf(drawn);
			expect(box.left).toBeGreaterThanOrEqual(0);
			expect(box.right).toBeLessThanOrEqual(width);
			expect(box.top).toBeGreaterThanOrEqual(0);
			expect(box.bottom).toBeLessThanOrEqual(height + 4);
		}
	}
});

test.each([
	['.065', '1/8', 'rework', 'Length needed: The stack alone'],
	['.2525', '1/4', 'rework', 'Shorter than the length needed'],
	['.065', '1/4', 'rework', 'Length needed: The stack alone'],
	['.9', '1', 'rework', 'Length needed: Add the layers, and 1.5D for the shop head.'],
	['.2525', '5/16', 'accept', '0.2525 in, and the next 1/16 in up is 5/16 in']
])('%s needed and %s taken is %s, and told why', async (needed, taken, verdict, why) => {
	const answer = await answered(`${needed} in`, `${taken} in`);
	expect(answer?.verdict).toBe(verdict);
	expect(answer?.why).toContain(why);
	expect(answer?.driven?.right).toBe(taken === '5/16');
});

test('a slip that leads to both numbers is told once, and both fields are marked', async () => {
	const answer = await answered('.19', '3/16');
	expect(answer?.why).toBe('Length needed: Only the 1.5D for the shop head: the grip is left out.');
	expect(answer?.wrong).toEqual({ needed: true, taken: true });
});

test('a good rivet beside a wrong length is not praised under a Rework', async () => {
	const answer = await answered('.065', '5/16');
	expect(answer?.verdict).toBe('rework');
	expect(answer?.head).toBe('The rivet will do. The length needed is not right.');
	expect(answer?.wrong).toEqual({ needed: true, taken: false });
});

test('a rivet that is too short is not said to be a size too long for a sum that is wrong', async () => {
	const answer = await answered('.040+.025', '3/16');
	expect(answer?.why).toContain('Length needed: ');
	expect(answer?.why).not.toContain('One size more');
	expect(answer?.why).toContain('Then take the next 1/16 in up.');
});
