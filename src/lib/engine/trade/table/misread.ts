import type { SlipNotes } from '../../solver/method.ts';
import { slip, type SlipText } from '../../solver/write.ts';
import type { LookUp } from './look-up.ts';
import { type Misreading, misreadingsOf, misreadName, moves } from './misread-as.ts';
import { capital } from '../../quantity/capital.ts';

/** The cells around the right one, by the ids of the slips that read them. */
export const neighbours = {
	rowUp: 'above',
	rowDown: 'below',
	columnLeft: 'left',
	columnRight: 'right',
	upAndLeft: 'aboveLeft',
	upAndRight: 'aboveRight',
	downAndLeft: 'belowLeft',
	downAndRight: 'belowRight'
} as const;

/**
 * Slips of a step that looks a value up: ids for the misreadings wanted, `{ rowUp: 'above' }`.
 * `given` is what the formula hands to the look-up: `alloy, T`. Seldom made are those that miss row
 * and column, and of two looked for, those that miss one by two.
 */
export function misread<const I extends string>(
	lookUp: LookUp,
	given: string,
	ids: Readonly<Record<I, Misreading>>,
	notes: Pick<SlipNotes, 'late'> = {}
): Readonly<Record<I, SlipText>> {
	const slips = Object.entries<Misreading>(ids).map(([id, misreading]) => {
		if (!misreadingsOf(lookUp).includes(misreading)) {
			throw new Error(`${id}: ${lookUp.table.id} cannot be misread ${misreading}`);
		}
		const formula = `${misreadName(lookUp.name, misreading)}(${given})`;
		const [down, right] = misreading === 'between' ? [0, 0] : moves[misreading];
		const isFar = Math.abs(down) > 1 || Math.abs(right) > 1;
		const rare = (down !== 0 && right !== 0) || (isFar && lookUp.column === null);
		const act = `${lookUp.table.id} ${misreading}`;
		return [id, slip(formula, sentence(lookUp, misreading), { rare, act, ...notes })];
	});
	return Object.fromEntries(slips) as Record<I, SlipText>;
}

function sentence(lookUp: LookUp, misreading: Misreading): string {
	const { words, table } = lookUp;
	if (misreading === 'between')
		return `Worked out between two rows: ${table.called} goes by steps, and there is nothing between them.`;
	const [down, right] = moves[misreading];
	const rows = tooFar(down, 'row', ['up', 'down']);
	const columns = tooFar(right, 'column', ['left', 'right']);
	if (down === 0) return `${capital(columns)}: that is ${beside(lookUp, right)}.`;
	if (right !== 0) return `${capital(rows)} and ${columns}.`;
	const there = {
		[-1]: `that is ${words.above}`,
		[1]: `that is ${words.below}`,
		[-2]: words.twoAbove,
		[2]: words.twoBelow
	}[down];
	return `${capital(rows)}${there ? `: ${there}` : ''}.`;
}

/** `two rows too far up` */
function tooFar(by: number, line: string, [back, on]: readonly [string, string]): string {
	const count = Math.abs(by);
	const lines = `${['no', 'one', 'two', 'three'][count]} ${line}${count === 1 ? '' : 's'}`;
	return `${lines} too far ${by < 0 ? back : on}`;
}

function beside({ words, table, column }: LookUp, right: number): string {
	if (words.beside) return words.beside;
	const key = column === null ? undefined : table.columns.keys[column + right]?.[0];
	return key === undefined ? 'another column' : `the ${table.columns.write(key).toLowerCase()}`;
}
