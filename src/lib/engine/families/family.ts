import type { Drawing } from '../figures/drawing.ts';
import type { Value } from '../quantity/value.ts';
import type { GivenValues, Method } from '../solver/method.ts';
import type { Seen } from '../solver/outcome.ts';
import type { CautionId } from '../trade/cautions.ts';
import type { Card } from './topics.ts';
import type { Random } from './random.ts';
import type { Level } from './level.ts';

/** What a family picks for one task. It picks; the method computes. */
export interface Draw<M extends Method = Method> {
	/** The method of this task where it is not the family's own: joined for it, or turned round. */
	readonly method?: Method;
	readonly given: GivenValues<M>;
	/** One or two sentences of the story; lengths belong in the givens, not here. */
	readonly story: string;
	/** The question, as the heading. */
	readonly question: string;
	/** Keys of the steps asked for, in the order of the method. */
	readonly asked: readonly (keyof M['steps'] & string)[];
	/**
	 * The slips that the question is about, by asked step: none of them may lead to an answer that
	 * would be accepted there. A draw in which one does is drawn again.
	 */
	readonly chief?: Chief<M>;
	/**
	 * Slips by id that marking should tell apart, in groups: a draw in which two of one group lead to
	 * the same wrong answers at all that is asked is drawn again.
	 */
	readonly apart?: readonly (readonly string[])[];
	/** Labels for this task where the method's own are too plain; a list has one a member. */
	readonly labels?: Readonly<Record<string, string | readonly string[]>>;
	/** Givens that are only told, not computed with: `['Head', 'universal']`. */
	readonly told?: readonly (readonly [string, string])[];
	/** The rule or figure wanted, where documents differ. */
	readonly basis?: string;
	readonly cautions: readonly CautionId[];
}

/** A draw worked by another method than the family's own, with the givens of that one. */
export type OtherDraw = Draw & { readonly method: Method };

/** Ids of slips of the method, by the key of a step that is asked. */
export type Chief<M extends Method = Method> = Readonly<
	Partial<Record<keyof M['steps'] & string, readonly string[]>>
>;

/** Says a length, count or angle of the task as it is shown to this person. */
export type Say = (key: string, value: Value) => string;

/** What a number would do to the metal: a drawing and one sentence. */
export interface Outcome {
	readonly drawing: Drawing;
	/** Draws it once more, for the place that it stands in (figures/fit.ts). */
	readonly draw: () => Drawing;
	readonly says: string;
}

/** The metal by the entered number, and by the right one. */
export interface Effect {
	readonly entered: Outcome;
	readonly right: Outcome;
}

/** What the method shows of an answer, for the drawing of it. */
export interface SeenBy<M extends Method = Method> extends Seen {
	readonly given: GivenValues<M>;
	/** A number among the student's values and what shows them. */
	readonly at: (key: string) => number;
	/** A list among them. */
	readonly list: (key: string) => readonly number[];
	/** Words among them. */
	readonly word: (key: string) => string;
	/** The same among the right values. */
	readonly rightAt: (key: string) => number;
	readonly rightList: (key: string) => readonly number[];
	/** A number of the drawing beside this one, so that both keep to one scale. */
	readonly beside: (key: string) => number;
}

/** Turns one method into practice: what to draw, how to tell it, what to show. */
export interface FamilyBody<M extends Method = Method> {
	readonly method: M;
	/** Methods of their own that a draw may name instead. */
	readonly others?: readonly Method[];
	readonly draw: (random: Random, level: Level) => Draw<M> | OtherDraw;
	/**
	 * The drawing on the task, from the givens alone; it must not show what is asked. A lesson gives
	 * the numbers it began with in `like`: a figure to scale keeps to the scale of those, so that what
	 * is moved is seen to grow.
	 */
	readonly figure: (given: GivenValues<M>, say: Say, like?: GivenValues<M>) => Drawing;
	/**
	 * The metal by an answer: drawn from what the method shows of it (`outcomes` there), with nothing
	 * computed but places on paper. Null where nothing can be drawn.
	 */
	readonly metal?: (seen: SeenBy<M>, say: Say) => Drawing | null;
}

/** A family as it is used: its card and its body. */
export interface Family extends Card, FamilyBody {}

/**
 * The body of a family. The types of its method are sealed in, so that unlike families share
 * one list.
 */
export function family<const M extends Method>(parts: FamilyBody<M>): FamilyBody {
	return parts as unknown as FamilyBody;
}
