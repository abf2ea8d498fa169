import type { Value } from '$lib/engine/quantity/value.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Box } from '$lib/engine/figures/drawing.ts';
import type { Values } from '$lib/engine/solver/compiled.ts';
import { fitOf, type Room } from '$lib/engine/figures/fit.ts';
import { grownBy } from '$lib/engine/figures/size.ts';
import { toSvg } from '$lib/engine/figures/to-svg.ts';
import { type Hand, valueUnder } from '$lib/engine/lessons/hand.ts';
import { move, reachOf, type Way, workedBy } from '$lib/engine/lessons/lesson.ts';
import { around, drawingOf, frameOf, scaleOf } from '$lib/engine/lessons/lettered.ts';
import { slipShown, slipsOf } from '$lib/engine/lessons/slips.ts';
import { boundsOf } from '$lib/engine/figures/to-svg.ts';
import { textAt } from '$lib/engine/solver/show.ts';

/** A lesson as its reader has it: the numbers under the hand, and the slip that is switched on. */
export class LessonBoard {
	readonly way: Way;
	given = $state.raw<Values>({});
	/** Id of the slip that is worked beside the right way; null for none. */
	slip = $state<string | null>(null);
	readonly #units: () => LengthUnit;
	readonly #like: Values;
	/** Where its drawing stands. */
	room = $state.raw<Room>({ width: 452, height: 330 });
	/** Grows with what is drawn and never shrinks, so that the drawing does not jump. */
	#frame: Box | null = null;

	constructor(way: Way, units: () => LengthUnit) {
		this.way = way;
		this.#units = units;
		this.given = way.start.given;
		this.#like = scaleOf(way);
		this.slip = this.#firstSlip();
	}

	readonly right: Values = $derived.by(() => workedBy(this.way.method, this.given) ?? {});

	/** How large metal is drawn, so that there is room for it however far a hand is moved. */
	readonly #fit = $derived.by(() => {
		const units = this.#units();
		const frame = () => frameOf(this.way, this.way.start.given, this.#like, units);
		const fit = fitOf(frame, this.room);
		this.#frame = null;
		return { ...fit, frame: grownBy(fit.growth, frame) };
	});

	readonly drawing: string = $derived.by(() => {
		const { growth, pixels, frame } = this.#fit;
		return grownBy(growth, () => {
			const drawing = drawingOf(this.way, this.given, this.#like, this.#units());
			this.#frame = around(this.#frame ?? frame, boundsOf(drawing.shapes));
			return toSvg(drawing, this.#frame, pixels);
		});
	});

	readonly shown = $derived.by(() =>
		this.slip === null
			? null
			: slipShown(this.way, this.given, this.right, this.slip, this.#units())
	);

	/** The first slip that shows on the numbers the lesson begins with. */
	#firstSlip(): string | null {
		const found = slipsOf(this.way).find(
			([id]) => slipShown(this.way, this.given, this.right, id, this.#units()).at
		);
		return found?.[0] ?? null;
	}

	/** The values that a hand can be moved to, and where among them it is. */
	reach(hand: Hand): { readonly values: readonly Value[]; readonly at: number } {
		const values = reachOf(this.way, this.given, hand);
		return { values, at: values.indexOf(valueUnder(this.given, hand)) };
	}

	move(hand: Hand, value: Value | undefined): void {
		if (value !== undefined) this.given = move(this.way, this.given, hand, value);
	}

	text(key: string, value: Value): string {
		return textAt(this.way.method, key, value, this.#units());
	}

	turn(slip: string): void {
		this.slip = this.slip === slip ? null : slip;
	}
}
