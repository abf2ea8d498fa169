import { expect, test } from 'vitest';
import { layOut, momentOf } from '../../../src/lib/engine/time-plan/lay-out.ts';
import type { TimeStep } from '../../../src/lib/engine/time-plan/steps.ts';
import { timeFigure } from '../../../src/lib/ui/time-plan/time-figure.ts';

const step = (id: string): TimeStep => ({
	...{ id, name: `Step ${id}`, guess: 30, minutes: 30, left: 30, state: 'open' },
	...{ isOwn: false, canWait: false, isOut: false }
});

test('words at a step stand on paper, over the lines of the times at the bench', () => {
	const day = '2026-11-26';
	const times = [
		{ day, from: 540, to: 600 },
		{ day, from: 660, to: 720 }
	];
	const all = ['1', '2', '3'].map(step);
	const layout = layOut(all, { due: { day, time: 1440 }, times }, momentOf(day, 0));
	const { shapes } = timeFigure(layout, 900, Number);
	const words = shapes.findIndex((shape) => shape.kind === 'text' && shape.text.startsWith('1. '));
	const ground = shapes[words - 1];
	expect(ground).toMatchObject({ kind: 'path', fill: 'paper', line: 'none' });
	const lines = shapes.flatMap((shape, i) =>
		shape.kind === 'path' && shape.line === 'thin' && shape.d.includes('-12') ? [i] : []
	);
	expect(lines.length).toBeGreaterThan(1);
	expect(Math.max(...lines)).toBeLessThan(words - 1);
});
