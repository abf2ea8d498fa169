import type { Method } from './method.ts';
import type { CompiledOutcome, Told, ToldSlip } from './told.ts';
import type { Part } from './trade-function.ts';
import type { Piece } from './write.ts';

/** What the build compiles of what is told. */
interface CompiledTold {
	readonly steps: Readonly<Record<string, readonly Part[]>>;
	readonly slips: Readonly<Record<string, readonly Part[]>>;
	readonly outcomes: readonly CompiledOutcome[];
}

/** What a method or a piece tells, from its whole text and what was compiled of it. */
export function toldBy(written: Method | Piece, { steps, slips, outcomes }: CompiledTold): Told {
	const says = 'piece' in written ? written.step.slips : ownSlips(written);
	const toldSlips = Object.entries(slips).map(([key, show]): [string, ToldSlip] => {
		const { formula = '', says: sentence = '' } = says[key] ?? {};
		return [key, { formula, says: sentence, show }];
	});
	return {
		asks: 'piece' in written ? { step: written.step.asks } : ownQuestions(written),
		steps,
		slips: Object.fromEntries(toldSlips),
		outcomes: outcomes.map((compiled, i) => {
			const { shows = {}, cases = {} } = ('outcomes' in written && written.outcomes[i]) || {};
			return { shows, cases, compiled };
		}),
		inverses: 'inverses' in written ? inversesOf(written) : {}
	};
}

/** The questions of the steps that a method wrote itself, by the key they are compiled under. */
function ownQuestions({ id, steps }: Method): Record<string, string> {
	const own = Object.values(steps).filter(({ from }) => from.unit === id);
	return Object.fromEntries(own.map(({ from, asks }) => [from.key, asks]));
}

/** The slips that a method wrote itself, by the key they are compiled under. */
function ownSlips({ id, slips }: Method): Record<string, Method['slips'][string]> {
	const own = Object.values(slips).filter(({ from }) => from.unit === id);
	return Object.fromEntries(own.map((slip) => [slip.from.key, slip]));
}

function inversesOf({ inverses }: Method): Record<string, Readonly<Record<string, string>>> {
	return Object.fromEntries(
		Object.entries(inverses).flatMap(([want, inverse]) =>
			'slips' in inverse ? [[want, inverse.slips] as const] : []
		)
	);
}
