/** An entry that is off, and what is said of it. */
export interface Line {
	readonly key: string;
	/** `Length needed, 0.357 in` */
	readonly label: string;
	readonly entered: string;
	readonly says: string;
	/** The same where it is said of several entries at once. */
	readonly saysOfAll: string;
	readonly choices: readonly unknown[];
}

/** A sentence, and the entries that it is said of, in their order. */
export interface Said<L extends Line> {
	readonly first: L;
	readonly all: readonly L[];
	readonly says: string;
}

/** Entries of which the same is said, told together; one with something to choose stands alone. */
export function saidTogether<L extends Line>(lines: readonly L[]): Said<L>[] {
	const groups = new Map<string, L[]>();
	for (const line of lines) {
		const name = line.choices.length > 0 ? `${line.key}: ${line.says}` : line.says;
		groups.set(name, [...(groups.get(name) ?? []), line]);
	}
	return [...groups.values()].flatMap((all) => {
		const [first] = all;
		return first ? [{ first, all, says: all.length > 1 ? first.saysOfAll : first.says }] : [];
	});
}
