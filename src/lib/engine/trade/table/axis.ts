import { angle, length, number, word } from '../../quantity/kinds.ts';
import type { Kind } from '../../quantity/kinds/kind.ts';

/** What a row or a column is reached by: a size in base units, or a name. */
export type Key = number | string;

/** The rows or the columns of a table. */
export interface Axis<K extends Key = Key> {
	readonly label: string;
	readonly kind: Kind;
	/** The keys as printed; names that share a row or column stand together. */
	readonly keys: readonly (readonly K[])[];
	/** What stands behind a list of the keys: `in`. */
	readonly unit: string;
	/** Told to somebody whose key is not there, instead of a list of those that are. */
	readonly advice: string | null;
	write(key: K): string;
	/** Place, from 0, of the row or column that a key means; −1 when there is none. */
	placeOf(key: K): number;
}

/** Sizes nearer to each other than this are the same. */
const perUnit = 1e6;

interface SizeNotes {
	write?: (size: number) => string;
	/** Sizes that come out alike share a row: a gauge and its older neighbour. */
	means?: (size: number) => number;
}

function bySize(kind: Kind, unit: string) {
	return (label: string, sizes: readonly number[], notes: SizeNotes = {}): Axis<number> => {
		const { write = String, means = (size) => size } = notes;
		const groups = sizes.map((size) => [size]);
		const mark = (size: number) => Math.round(means(size) * perUnit);
		return axis({ label, kind, unit, advice: null, keys: groups, write }, mark);
	};
}

export const byLength = bySize(length, ' in');
export const byAngle = bySize(angle, '°');
export const byNumber = bySize(number, '');

interface NameNotes<K extends string> {
	write?: (name: K) => string;
	/** Names that come out alike share a row: `2024-T3` and `2024-T4` where tempers do not count. */
	means?: (name: string) => string;
	advice?: string;
}

/** `groups`: a name, or the names that share it, for each row or column. */
export function byName<K extends string>(
	label: string,
	groups: readonly (readonly K[])[],
	notes: NameNotes<K> = {}
): Axis<K> {
	const { write = (name) => name, means = (name) => name.trim(), advice = null } = notes;
	return axis({ label, kind: word, unit: '', advice, keys: groups, write }, means);
}

function axis<K extends Key>(
	parts: Omit<Axis<K>, 'placeOf'>,
	mark: (key: K) => number | string
): Axis<K> {
	const places = new Map(
		parts.keys.flatMap((group, place) => group.map((key) => [mark(key), place] as const))
	);
	return { ...parts, placeOf: (key) => places.get(mark(key)) ?? -1 };
}
