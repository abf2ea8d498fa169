import type { Kind } from '../quantity/kinds/kind.ts';
import type { Given } from './given.ts';
import { laidOutcome, laidSlip, notesOf, renamed, uses } from './laid.ts';
import type {
	Case,
	Inverse,
	Limit,
	Method,
	Origin,
	Outcome,
	Shown,
	Slip,
	SlipNotes,
	Step,
	StepNotes,
	Tolerance
} from './method.ts';

/*
 * How methods and pieces are written. `method()` lays the steps out flat: whoever works, marks or
 * shows a method sees steps and slips, and not which of them came out of a piece.
 */

/** A slip as it is written inside its step. */
export interface SlipText extends SlipNotes {
	readonly formula: string;
	readonly says: string;
	/** The names it is worked from, where its formula is told later. */
	readonly uses?: readonly string[];
}

/** A step as it is written, with its slips. */
export interface StepText extends StepNotes {
	readonly formula: string;
	readonly slips: Readonly<Record<string, SlipText>>;
}

/**
 * A step that the trade knows by name, written once for every method: its rule, its slips and a
 * skill of its own.
 */
export interface Piece {
	readonly piece: string;
	/** The names its formulas are written with. */
	readonly needs: Readonly<Record<string, Given>>;
	/** Names that only slips use: a slip is left out of a method that has no such value. */
	readonly may: Readonly<Record<string, Given>>;
	readonly step: StepText;
}

/** A piece in a method whose values have other names, or that labels it in other words. */
export interface PieceUse {
	readonly of: Piece;
	readonly names: Readonly<Record<string, string>>;
	readonly notes: Partial<StepNotes>;
	/** Its slips that are seldom made in this method, or that a slip of its own tells as well. */
	readonly rare: readonly string[];
}

interface UseOptions extends Partial<StepNotes> {
	readonly rare?: readonly string[];
}

interface StepOptions {
	symbol?: string;
	asks?: string;
	kind?: Kind;
	rule?: string;
	tolerance?: Tolerance;
	slips?: Readonly<Record<string, SlipText>>;
}

export function step(formula: string, label: string, options: StepOptions = {}): StepText {
	const { symbol = null, asks = '', kind = null, rule = null, tolerance = null } = options;
	return { formula, label, symbol, asks, kind, rule, tolerance, slips: options.slips ?? {} };
}

export function slip(
	formula: string,
	says: string,
	{ rare = false, ...notes }: Partial<SlipNotes> = {}
): SlipText {
	return { formula, says, rare, ...notes };
}

/** @param id stands in learners' records: never used again for something else */
export function piece(
	id: string,
	needs: Readonly<Record<string, Given>>,
	text: StepText,
	may: Readonly<Record<string, Given>> = {}
): Piece {
	return { piece: id, needs, may, step: text };
}

/** A piece under other names: `use(setback, { angle: 'angles' })`. */
export function use(
	of: Piece,
	names: Readonly<Record<string, string>> = {},
	{ rare = [], ...notes }: UseOptions = {}
): PieceUse {
	return { of, names, notes, rare };
}

export type LimitText = Omit<Limit, 'from'>;

/** `value` must not come out under `bound`. */
export function atLeast(
	value: string,
	bound: string,
	says: string,
	{ what = '', rule = null }: { what?: string; rule?: string | null } = {}
): LimitText {
	return { what, value, bound, least: true, says, rule };
}

/** `value` must not come out over `bound`. */
export function atMost(...limit: Parameters<typeof atLeast>): LimitText {
	return { ...atLeast(...limit), least: false };
}

export type OutcomeText = Omit<Outcome, 'from'>;

/**
 * What an answer to one of the steps `at` does to the metal. Formulas read the method worked with
 * the student's value in place; `entered` is that value, `right.x` the right value of `x`.
 *
 * @param cases the first one that holds is told; the last one has no condition
 */
export function outcome(
	at: readonly string[],
	shows: Readonly<Record<string, Shown>>,
	cases: Readonly<Record<string, Case>>
): OutcomeText {
	return { at, shows, cases };
}

export function shown(formula: string, kind: Kind | null = null): Shown {
	return { formula, kind };
}

export function when(condition: string, says: string): Case {
	return { when: condition, says };
}

export function otherwise(says: string): Case {
	return { when: null, says };
}

type Written = StepText | Piece | PieceUse;

/** A method with its compiled formulas left out: plain data that a build step compiles. */
export function method<
	const G extends Record<string, Given>,
	const S extends Record<string, Written>
>(parts: {
	id: string;
	title: string;
	given: G;
	steps: S;
	limits?: readonly LimitText[];
	outcomes?: readonly OutcomeText[];
	inverses?: Readonly<Record<string, Inverse>>;
}): Method<G, keyof S & string> {
	const { id, title, given, limits = [], outcomes = [], inverses = {} } = parts;
	const scope = new Set(Object.keys(given));
	const steps: Record<string, Step> = {};
	const slips: Slip[] = [];
	for (const [key, written] of Object.entries<Written>(parts.steps)) {
		const [laid, own] = laidOut(id, key, written, scope);
		steps[key] = laid;
		slips.push(...own);
		scope.add(key);
	}
	return {
		id,
		title,
		given,
		steps: steps as Readonly<Record<keyof S & string, Step>>,
		slips: named(slips),
		limits: limits.map((one, i) => ({ ...one, from: origin(id, String(i)) })),
		outcomes: outcomes.map((one, i) => laidOutcome(one, one.at, origin(id, String(i)))),
		inverses
	};
}

function origin(unit: string, key: string, names: Origin['names'] = {}): Origin {
	return { unit, key, names };
}

function laidOut(
	id: string,
	key: string,
	written: Written,
	scope: ReadonlySet<string>
): [Step, Slip[]] {
	if ('formula' in written) {
		const { slips, ...notes } = written;
		const from = origin(id, key);
		const laid = { ...notes, skill: `${id}/${key}`, from };
		const own = Object.entries(slips).map(([slipId, text]) =>
			laidSlip(text, {}, { step: key, ...notesOf(text), id: slipId, from: origin(id, slipId) })
		);
		return [laid, own];
	}
	const { of, names, notes, rare } = 'piece' in written ? use(written) : written;
	const { slips, formula, ...own } = of.step;
	const unit = `piece/${of.piece}`;
	const laid: Step = {
		...own,
		...notes,
		formula: renamed(formula, names),
		skill: unit,
		from: origin(unit, 'step', names)
	};
	const known = Object.entries(slips).filter(([, text]) =>
		Object.keys(of.may).every((name) => !uses(text, name) || scope.has(names[name] ?? name))
	);
	const laidSlips = known.map(([slipId, text]) =>
		laidSlip(text, names, {
			step: key,
			...notesOf(text),
			rare: text.rare || rare.includes(slipId),
			id: slipId,
			from: origin(unit, slipId, names)
		})
	);
	return [laid, laidSlips];
}

/**
 * Slips by id. Where several steps have a slip of one id, it belongs to the step that the method
 * wrote itself, if there is one; the others have their step's key in front.
 */
export function named(slips: readonly Slip[]): Record<string, Slip> {
	return Object.fromEntries(
		slips.map((one) => {
			const alike = slips.filter(({ id }) => id === one.id);
			const own = alike.filter(({ from }) => !from.unit.startsWith('piece/'));
			const first = own.length > 0 ? own : alike;
			return [first.length === 1 && first[0] === one ? one.id : `${one.step}.${one.id}`, one];
		})
	);
}
