import type { InverseSlip, Method } from './method.ts';
import type { CompiledOutcome, Told, ToldInverse, ToldSlip } from './told.ts';
import type { Part } from './trade-function.ts';
import type { Piece } from './write.ts';

/** What the build compiles of what is told. */
interface CompiledTold {
	readonly steps: Readonly<Record<string, readonly Part[]>>;
	readonly slips: Readonly<Record<string, readonly Part[]>>;
	readonly outcomes: readonly CompiledOutcome[];
	readonly inverses: Readonly<Record<string, CompiledInverse>>;
}

interface CompiledInverse {
	readonly show: readonly Part[];
	readonly slips: Readonly<Record<string, readonly Part[]>>;
}

/** What a method or a piece tells, from its whole text and what was compiled of it. */
export function toldBy(
	written: Method | Piece,
	{ steps, slips, outcomes, inverses }: CompiledTold
): Told {
	const says = 'piece' in written ? written.step.slips : ownSlips(written);
	return {
		asks: 'piece' in written ? { step: written.step.asks } : ownQuestions(written),
		steps,
		slips: toldSlips(says, slips),
		outcomes: outcomes.map((compiled, i) => {
			const { shows = {}, cases = {} } = ('outcomes' in written && written.outcomes[i]) || {};
			return { shows, cases, compiled };
		}),
		inverses: 'inverses' in written ? inversesOf(written, inverses) : {}
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

/** Slips as they are written, with what their formulas look like. */
function toldSlips(
	written: Readonly<Record<string, InverseSlip>>,
	shows: Readonly<Record<string, readonly Part[]>>
): Record<string, ToldSlip> {
	return Object.fromEntries(
		Object.entries(shows).map(([key, show]) => {
			const { formula = '', says = '' } = written[key] ?? {};
			return [key, { formula, says, show }];
		})
	);
}

function inversesOf(
	{ inverses }: Method,
	compiled: CompiledTold['inverses']
): Record<string, ToldInverse> {
	return Object.fromEntries(
		Object.entries(compiled).map(([want, { show, slips }]) => {
			const written = inverses[want];
			return [
				want,
				{ show, slips: toldSlips(written && 'slips' in written ? written.slips : {}, slips) }
			];
		})
	);
}
