import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { randomFrom } from '../../../src/lib/engine/families/random.ts';
import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { toleranceAt } from '../../../src/lib/engine/solver/tolerance.ts';
import { drawTask, stepsOf, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { itemOf } from '../../../src/lib/exchange/qti/item.ts';
import { processorOf } from './processor.ts';

/** Of so many numbers entered, those that Bucktail and the item mark otherwise. */
export interface Agreement {
	readonly entries: number;
	readonly right: number;
	readonly otherwise: readonly string[];
}

/**
 * Numbers in the fields of items of every family and level: right, at both edges of the tolerance
 * and just beyond, rounded, and off by anything.
 */
export async function agreementOn(seeds: readonly number[], each: number): Promise<Agreement> {
	await loadReader();
	const families = await loadFamilies();
	const found = { entries: 0, right: 0, otherwise: [] as string[] };
	for (const family of families) {
		for (const level of levels) {
			for (const seed of seeds) compare(drawTask(family, level, seed), each, found);
		}
	}
	return found;
}

function compare(
	task: Task,
	each: number,
	found: { entries: number; right: number; otherwise: string[] }
): void {
	const marks = stepsOf(task).map(() => 1);
	const item = itemOf({ place: 1, task, marks, question: null }, { href: 'x.svg', title: 'x' });
	if (!item) return;
	const process = processorOf(item.xml);
	// A task that asks for much gets no more entries than others.
	const few = Math.ceil((3 * each) / Math.max(3, task.drawn.asked.length));
	for (const [i, key] of task.drawn.asked.entries()) {
		const kind = kindAt(task.method, key);
		const right = task.right[key];
		if (typeof right !== 'number') continue;
		for (const typed of numbersNear(right, toleranceAt(task.method, key).valueOf(), few, task)) {
			const unit = kind.dimension.unit;
			const entry = entryOf(readAnswer(task.method, key, `${typed} ${unit}`.trim(), 'in'));
			if (!entry) continue;
			const ours = mark(task, { [key]: entry })[key]?.kind === 'accept';
			const theirs = process({ [`R${i + 1}`]: typed }).score > 0;
			found.entries++;
			if (ours) found.right++;
			if (ours !== theirs) found.otherwise.push(`${task.number} ${key} ${typed}: ${String(ours)}`);
		}
	}
}

function numbersNear(right: number, tolerance: number, count: number, task: Task): string[] {
	const random = randomFrom(`entries ${task.number}`);
	const places = [0, 1, 2, 3, 4, 5, 6];
	const offs = [0, 1, -1, 0.5, -0.5, 1.001, -1.001, 0.999, -0.999, 2, -2];
	return Array.from({ length: count }, () => {
		const off = random.pick(offs) * (tolerance || 0.001);
		const wild = random.int(0, 9) === 0 ? (right * random.int(-300, 300)) / 1000 : 0;
		return Math.abs(right + off + wild).toFixed(random.pick(places));
	});
}
