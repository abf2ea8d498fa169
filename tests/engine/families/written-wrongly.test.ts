import { expect, test } from 'vitest';
import { length } from '../../../src/lib/engine/quantity/kinds.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { method, slip, step } from '../../../src/lib/engine/solver/write.ts';
import { compiledHere } from '../solver/compile-here.ts';
import { familyOf } from './family-of.ts';
import { allTasks } from './many-tasks.ts';
import { draftFault, idleSlips } from './written-wrongly.ts';

const laps = await familyOf('lap-width');

/** The family with something else in its draws. */
function drawing(other: (given: object) => object) {
	const draw: typeof laps.draw = (random, level) => {
		const drawn = laps.draw(random, level);
		return { ...drawn, ...other(drawn.given) };
	};
	return draftFault({ ...laps, draw }, 1);
}

test('givens that are missing, misspelt or too many are told with those wanted', () => {
	expect(draftFault(laps, 1)).toBeNull();
	expect(
		drawing(({ ...some }: { pitch?: number }) => {
			delete some.pitch;
			return { given: some };
		})
	).toBe('draw gives D, head, rows, and lap-width wants D, head, rows, pitch');
	expect(drawing((others) => ({ given: { ...others, T: 1 } }))).toMatch(
		/pitch, T, and lap-width wants/
	);
});

test('a chief slip that is made after its step is sent to its own', () => {
	expect(drawing(() => ({ chief: { rowsApart: ['oneEdge'] } }))).toBe(
		'the chief slip oneEdge of rowsApart is made later, in width: name it under width'
	);
});

test('a slip that always comes to the right value is told', () => {
	const made = compiledHere(
		method({
			id: 'made-up',
			title: 'Made up',
			given: { D: given(length, 'Diameter') },
			steps: {
				result: step('2 * D', 'Result', {
					slips: { idle: slip('3 * D - D', 'None.'), thrice: slip('3 * D', 'Three.') }
				})
			}
		})
	);
	const [one] = allTasks(laps);
	if (!one) throw new Error('no task');
	const values = { D: 1 };
	const task = {
		...one,
		method: made,
		drawn: { ...one.drawn, given: values },
		right: evaluate(made, values)
	};
	expect(idleSlips(made, [task])).toEqual([
		'made-up.result, slip idle: always comes to the right value; correct its formula, or leave it out'
	]);
});
