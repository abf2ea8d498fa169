import { slip, type SlipText } from '../../solver/write.ts';
import type { LookUp } from './look-up.ts';
import { type Misreading, misreadingsOf, misreadName } from './misread-as.ts';

/**
 * Slips of a step that looks a value up: ids for the misreadings wanted, `{ rowUp: 'above' }`.
 * `given` is what the formula hands to the look-up: `alloy, T`. Seldom made are those that miss row
 * and column, and of two looked for, those that miss one by two.
 */
export function misread<const I extends string>(
	lookUp: LookUp,
	given: string,
	ids: Readonly<Record<I, Misreading>>
): Readonly<Record<I, SlipText>> {
	const slips = Object.entries<Misreading>(ids).map(([id, misreading]) => {
		if (!misreadingsOf(lookUp).includes(misreading)) {
			throw new Error(`${id}: ${lookUp.table.id} cannot be misread ${misreading}`);
		}
		const formula = `${misreadName(lookUp.name, misreading)}(${given})`;
		const rare =
			aslant.includes(misreading) || (far.includes(misreading) && lookUp.column === null);
		return [
			id,
			slip(formula, sentence(lookUp, misreading), { rare, act: `${lookUp.table.id} ${misreading}` })
		];
	});
	return Object.fromEntries(slips) as Record<I, SlipText>;
}

const far: readonly Misreading[] = ['twoAbove', 'twoBelow', 'twoLeft', 'twoRight'];
const aslant: readonly Misreading[] = ['aboveLeft', 'aboveRight', 'belowLeft', 'belowRight'];

function sentence(lookUp: LookUp, misreading: Misreading): string {
	const { words, table } = lookUp;
	switch (misreading) {
		case 'above':
			return `One row too far up: that is ${words.above}.`;
		case 'below':
			return `One row too far down: that is ${words.below}.`;
		case 'twoAbove':
			return words.twoAbove ? `Two rows too far up: ${words.twoAbove}.` : 'Two rows too far up.';
		case 'twoBelow':
			return words.twoBelow
				? `Two rows too far down: ${words.twoBelow}.`
				: 'Two rows too far down.';
		case 'left':
			return `One column too far left: that is ${beside(lookUp, -1)}.`;
		case 'right':
			return `One column too far right: that is ${beside(lookUp, 1)}.`;
		case 'twoLeft':
			return `Two columns too far left: that is ${beside(lookUp, -2)}.`;
		case 'twoRight':
			return `Two columns too far right: that is ${beside(lookUp, 2)}.`;
		case 'aboveLeft':
			return 'One row too far up and one column too far left.';
		case 'aboveRight':
			return 'One row too far up and one column too far right.';
		case 'belowLeft':
			return 'One row too far down and one column too far left.';
		case 'belowRight':
			return 'One row too far down and one column too far right.';
		case 'between':
			return `Worked out between two rows: ${table.called} goes by steps, and there is nothing between them.`;
	}
}

function beside({ words, table, column }: LookUp, right: number): string {
	if (words.beside) return words.beside;
	const key = column === null ? undefined : table.columns.keys[column + right]?.[0];
	return key === undefined ? 'another column' : `the ${table.columns.write(key).toLowerCase()}`;
}
