import { describe, expect, test } from 'vitest';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { familyOf } from '../families/family-of.ts';

await loadReader();

const lengths = await familyOf('rivet-length');
const removal = await familyOf('removal-drill');
const holes = await familyOf('drill-for-rivet');
const bends = await familyOf('sight-line');

/** A task with these givens. */
function taskOf(family: typeof lengths, given: object, asked: readonly string[]): Task {
	const plain = { story: '', question: '', cautions: [] };
	const draw = () => ({ ...plain, given: { ...given }, asked });
	return drawTask({ ...family, draw }, 1, 1);
}

// Grip 0.080 and 1.5D are 0.2675 in, so 5/16 in: 7.9375 mm.
const length = taskOf(lengths, { layers: [0.04, 0.04], D: 1 / 8 }, ['length']);
// 0.425D is 0.0531 in, 1.35 mm; two thirds of 0.126 in are 0.084 in, 2.13 mm.
const depth = taskOf(removal, { layers: [0.063, 0.063], D: 3 / 16 }, ['depth', 'tightDepth']);
const drill = taskOf(holes, { D: 1 / 8 }, ['final']);

// The sight line lies at 1 - 0.165 + 0.125 = 0.960 in, 24.384 mm.
const line = taskOf(bends, { leg: 1, R: 1 / 8, T: 0.04, angle: 90 }, ['sightLine']);

function verdict(task: Task, key: string, text: string) {
	const entry = entryOf(readAnswer(task.method, key, text, 'in'));
	if (!entry) throw new Error(`not read: ${text}`);
	return mark(task, { [key]: entry })[key]?.kind;
}

describe('an answer in millimetres goes by a metric tool', () => {
	test.each([
		[length, 'length', '8 mm', 'accept'],
		[length, 'length', '7.9 mm', 'accept'],
		[length, 'length', '0.8 cm', 'accept'],
		[length, 'length', '8.1 mm', 'rework'],
		[length, 'length', '6.4 mm', 'rework'],
		// 0.425 × 4.7625 mm is 2.024 mm.
		[depth, 'depth', '2 mm', 'accept'],
		[depth, 'depth', '2.4 mm', 'rework'],
		[depth, 'tightDepth', '2 mm', 'accept'],
		[depth, 'tightDepth', '3.2 mm', 'rework'],
		// Laid out with a scale that reads half millimetres.
		[line, 'sightLine', '24.5 mm', 'accept'],
		[line, 'sightLine', '24.85 mm', 'accept'],
		[line, 'sightLine', '25 mm', 'rework'],
		// No. 30 is 3.264 mm.
		[drill, 'final', '3.3 mm', 'accept'],
		[drill, 'final', '3.2 mm', 'rework']
	] as const)('%#', (task, key, text, kind) => {
		expect(verdict(task, key, text)).toBe(kind);
	});

	test.each([
		[length, 'length', '0.3145', 'rework'],
		[line, 'sightLine', '0.977', 'rework'],
		[line, 'sightLine', '61/64', 'accept'],
		[drill, 'final', '0.130', 'rework'],
		[depth, 'depth', '5/64', 'accept'],
		[depth, 'depth', '3/32', 'rework'],
		[depth, 'tightDepth', '3/32', 'accept'],
		[depth, 'tightDepth', '1/8', 'rework']
	] as const)('and one in inches does not: %#', (task, key, text, kind) => {
		expect(verdict(task, key, text)).toBe(kind);
	});
});
