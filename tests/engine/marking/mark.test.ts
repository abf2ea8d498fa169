import { describe, expect, test } from 'vitest';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { sayCause, stepOf } from '../../../src/lib/engine/marking/say.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { setback } from '../../../src/lib/engine/methods/setback.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

function causeOf(task: Task, key: string, text: string) {
	const verdict = verdictsOn(task, { [key]: text })[key];
	return verdict?.kind === 'rework' ? verdict.cause : null;
}

// Skin, doubler and frame of 0.050 + 0.051 + 0.063 in with a 1/8 in rivet: grip 0.164, shank
// 0.1875, needed 0.3515, next stocked length 3/8.
const stack = await taskOf('RL', rivetLength, { layers: [0.05, 0.051, 0.063], D: 1 / 8 });
const right = { kind: 'accept', carried: false };

describe('a stocked length', () => {
	test.each(['3/8', '.375', '0.375 in', '9.525 mm', '-6', '−6', '⅜', '6/16', '375 thou'])(
		'%s is accepted',
		(text) => {
			expect(verdictsOn(stack, { length: text }).length).toEqual(right);
		}
	);

	test.each([['0.3515', 'notStocked']])('%s is the slip %s', (text, slip) => {
		expect(causeOf(stack, 'length', text)).toMatchObject({ kind: 'slip', slips: [slip] });
	});

	test('a length that grip or shank alone would take is offered as either', () => {
		const cause = causeOf(stack, 'length', '3/16');
		expect(cause).toMatchObject({ kind: 'either', slips: ['noShank', 'noGrip'] });
	});

	test('a number that more than three slips could explain names none', () => {
		// A layer left out, 1 D instead of 1.5 D, rounded down: all end at 5/16.
		expect(causeOf(stack, 'length', '5/16')).toEqual({ kind: 'unknown' });
	});

	test('what else stands on the sheet tells them apart', () => {
		const rest = { needed: '.3515' };
		expect(verdictsOn(stack, { ...rest, length: '5/16' }).length).toEqual({
			kind: 'rework',
			cause: { kind: 'slip', slips: ['down'] }
		});
	});

	test('a number from nowhere is not explained', () => {
		expect(causeOf(stack, 'length', '1 7/8')).toEqual({ kind: 'unknown' });
	});
});

describe('follow-through', () => {
	test('a later answer that follows from an earlier wrong one is right for it', () => {
		const marked = verdictsOn(stack, {
			grip: '0.063',
			shank: '0.1875',
			needed: '0.2505',
			length: '5/16'
		});
		expect(marked.grip).toMatchObject({
			kind: 'rework',
			cause: { kind: 'slip', slips: ['oneLayer'] }
		});
		expect(marked.shank).toEqual(right);
		expect(marked.needed).toEqual({ kind: 'accept', carried: true });
		// 0.2505 goes up to 5/16, which is what the student wrote.
		expect(marked.length).toEqual({ kind: 'accept', carried: true });
	});

	test('a second slip after a wrong value is found on top of it', () => {
		const marked = verdictsOn(stack, { grip: '0.063', needed: '0.063' });
		expect(marked.needed).toMatchObject({
			kind: 'rework',
			cause: { kind: 'slip', slips: ['noShank'] }
		});
	});

	test('right answers after a wrong one are right', () => {
		const marked = verdictsOn(stack, { grip: '0.1', length: '3/8' });
		expect(marked.length).toEqual(right);
	});
});

// R 0.25, T 0.064, 45° of bend: AC 43.13-1B par. 4-56b(2) prints K 0.41421 and setback 0.130.
const bend = await taskOf('BS', setback, { R: 0.25, T: 0.064, angle: 45 });

describe('a computed length', () => {
	test.each(['0.13', '.130', '0.1301', '0.1291', '3.3 mm'])('%s is within 0.001 in', (text) => {
		expect(verdictsOn(bend, { setback: text }).setback).toEqual(right);
	});

	test.each([
		['3.304', { kind: 'unit', unit: 'mm-for-inch' }],
		['130', { kind: 'unit', unit: 'thousandths' }],
		['1.301', { kind: 'digits', how: 'point' }],
		['0.310', { kind: 'digits', how: 'swapped' }],
		['0.1', { kind: 'rounding', how: 'end' }]
	])('%s: %j', (text, cause) => {
		expect(causeOf(bend, 'setback', text)).toEqual(cause);
	});

	test('two slips together are both named', () => {
		// K for the angle between the legs, and T left out.
		expect(causeOf(bend, 'setback', '0.6036')).toEqual({ kind: 'slip', slips: ['legs', 'noT'] });
	});

	test('every cause has one sentence and, where it can be told, a step', () => {
		for (const text of ['0.1', '130', '0.314', '7', '0.25', '0.41421']) {
			const cause = causeOf(bend, 'setback', text);
			if (!cause) throw new Error(`accepted: ${text}`);
			expect(sayCause(bend, cause, 'setback')).toMatch(/\.$/);
			const step = stepOf(bend, cause, 'setback');
			if (step !== null) expect(Object.keys(setback.steps)).toContain(step);
		}
	});
});

describe('the edges of a tolerance', () => {
	// 0.1301 in, exactly computed: K · (R + T) with T 0.064 and R 0.25.
	const value = Number(bend.right.setback);

	test('are both inside, and the next step outside is not', () => {
		const at = (offset: number) => (Math.round(value * 1e9) / 1e9 + offset).toFixed(9);
		expect(verdictsOn(bend, { setback: at(0.001) }).setback).toEqual(right);
		expect(verdictsOn(bend, { setback: at(-0.001) }).setback).toEqual(right);
		expect(verdictsOn(bend, { setback: at(0.0011) }).setback?.kind).toBe('rework');
		expect(verdictsOn(bend, { setback: at(-0.0011) }).setback?.kind).toBe('rework');
	});

	test('a sum that floating point misses is on its edge all the same', async () => {
		// 46 − 45.8 is 0.20000000000000284 in floating point; grips have the same trouble.
		const grips = await taskOf('RL', rivetLength, { layers: [0.1, 0.2], D: 1 / 8 });
		expect(verdictsOn(grips, { grip: '0.301' }).grip).toEqual(right);
		expect(verdictsOn(grips, { grip: '0.299' }).grip).toEqual(right);
		expect(verdictsOn(grips, { grip: '0.3011' }).grip?.kind).toBe('rework');
	});
});
