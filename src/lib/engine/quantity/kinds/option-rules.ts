/** What may stand beside the right value of a kind in a choice question, and in which order. */
export interface OptionRules<V> {
	/** Whether a wrong value could be taken for an answer at all. */
	fits(value: V): boolean;
	/** Below zero when the first stands before the second. */
	compare(one: V, other: V): number;
	/** How well a wrong value can be told from the right one by its size alone, from 0 up. */
	standsOut(value: V, right: V): number;
	/**
	 * Whether a value is put together from parts. Were every wrong one off by one slip only, the
	 * right one could be told as the one most like the others: one with two slips stands there too.
	 */
	readonly parted: boolean;
}

/** Numbers from small to large. */
export const numberOptions: OptionRules<number> = {
	fits: (value) => value >= 0,
	compare: (one, other) => one - other,
	standsOut(value, right) {
		const ratio = right > 0 ? value / right : 1.5;
		const far = ratio > 4 || ratio < 1 / 4;
		const near = Math.abs(ratio - 1) < 0.01;
		return 3 * Number(far) + Number(near);
	},
	parted: false
};

/** Words in the order of the alphabet. */
export const wordOptions: OptionRules<string> = {
	fits: () => true,
	compare: (one, other) => (one < other ? -1 : 1),
	standsOut: () => 0,
	parted: true
};

/** No options: several values are not asked for by choice. */
export const noOptions: OptionRules<never> = {
	fits: () => false,
	compare: () => 0,
	standsOut: () => 0,
	parted: false
};
