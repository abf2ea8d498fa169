import type { Exact } from '../exact.ts';
import type { LengthUnit } from '../value.ts';
import type { Reading } from '../reading.ts';
import type { Entry, Judgement, Kind } from './kind.ts';
import { noOptions } from './option-rules.ts';

/** What there may be several of in one field. */
export interface Listable<T extends number | string, R extends Exact | string> extends Kind<T, R> {
	/** Several of them as typed, at once. */
	readAll(text: string, units?: LengthUnit): Reading<readonly R[]>;
	/** The same, as soon as the reader is there. */
	workAll(text: string, units?: LengthUnit): Promise<Reading<readonly R[]>>;
	/** How several are written in one line: `0.500, 0.750 in`. */
	writeAll(values: readonly T[], units?: LengthUnit): string;
}

/** A kind of several values. */
export interface ListKind<
	T extends number | string = number | string,
	R extends Exact | string = Exact | string
> extends Kind<readonly T[], readonly R[]> {
	/**
	 * The entry with as many values as are wanted: itself, or one value said for all; null when
	 * there is another number of them.
	 */
	fitted(entry: Entry<readonly R[]>, count: number): Entry<readonly R[]> | null;
}

/** Several values of a kind, in order; equal ones may be given once. */
export function listOf<T extends number | string, R extends Exact | string>(
	member: Listable<T, R>
): ListKind<T, R> {
	type Several = Entry<readonly R[]>;
	/** Whether every value of the entry, fitted to the others, passes a test. */
	const every = (
		entry: Several,
		values: readonly T[],
		test: (one: Entry<R>, value: T) => boolean
	) => {
		const ones = fitted(entry, values.length)?.value;
		return values.every((value, i) => {
			const one = ones?.[i];
			return one !== undefined && test({ value: one, grain: entry.grain }, value);
		});
	};
	const right: Judgement = { is: 'right' };
	const apart = (one: T, other: T | undefined, room: number) =>
		other === undefined || member.differs(one, other, room);
	return {
		id: `${member.id}s`,
		dimension: member.dimension,
		noun: `several values, each ${member.noun}`,
		hint: 'All of them in order, with semicolons between.',
		keys: member.keys,
		choices: [],
		member,
		isList: true,
		fine: member.fine,
		most: member.most,
		mistakes: { ...member.mistakes, digits: false },
		options: noOptions,
		fitted,
		example: (units) => member.example(units),
		read: (text, units) => member.readAll(text, units),
		work: (text, units) => member.workAll(text, units),
		judge(entry, values, tolerance) {
			const fits = every(
				entry,
				values,
				(one, value) => member.judge(one, value, tolerance).is === 'right'
			);
			if (fits) return right;
			// One value stands for all where all that are wanted are the same.
			const [first, ...others] = values;
			const once = entry.value.length === 1 && first !== undefined;
			const alike = once && others.every((one) => !member.differs(one, first, 1e-9));
			const [wanted, got] = [values.length, entry.value.length];
			if (got === wanted || alike) return { is: 'off' };
			const isFrom = (from: number) =>
				entry.value.every((value, i) => {
					const there = values[from + i];
					const one = { value, grain: entry.grain };
					return there !== undefined && member.judge(one, there, tolerance).is === 'right';
				});
			// A single value may be any of them; of two the first ones may have been left out.
			const part = isFrom(0) || (got > 1 && got < wanted && isFrom(wanted - got));
			return { is: 'miscounted', wanted, got, ...(part && { part }) };
		},
		isWritten: (entry, values, nearness) =>
			every(entry, values, (one, value) => member.isWritten(one, value, nearness)),
		differs: (ones, others, room) =>
			ones.length !== others.length || ones.some((one, i) => apart(one, others[i], room)),
		toValue(entry, values) {
			const ones = (values ? fitted(entry, values.length) : entry)?.value;
			const made = ones?.map((value) => member.toValue({ value, grain: entry.grain }));
			return made?.filter((one) => one !== null) ?? null;
		},
		isSound: (values) => values.every((one) => member.isSound(one)),
		numbers: (values) => values.flatMap((one) => member.numbers(one)),
		map: (values, change) =>
			values.map((one, place) => member.map(one, (value) => change(value, place))),
		scaled: ({ value, grain }, factor) => ({
			value: value.map((one) => member.scaled({ value: one, grain }, factor).value),
			grain: grain * factor.valueOf()
		}),
		members: (values) => values,
		write: (values, units) => member.writeAll(values, units),
		mathml: (values, units) => values.map((one) => member.mathml(one, units)).join('<mo>,</mo>'),
		nearest64: () => '',
		plain: (values) => values.map((one) => member.plain(one))
	};
}

const lists = new WeakMap<Kind, Kind>();

/**
 * The kind of several values of a kind, the same one every time; a kind that holds several things
 * by itself, as an order or a plan, stays.
 */
export function listed(member: Kind): Kind {
	if (!isListable(member)) return member;
	const list: Kind = lists.get(member) ?? listOf(member);
	lists.set(member, list);
	return list;
}

function isListable(kind: Kind): kind is Listable<number | string, Exact | string> {
	return 'readAll' in kind;
}

function fitted<R>(entry: Entry<readonly R[]>, count: number): Entry<readonly R[]> | null {
	const [only] = entry.value;
	if (entry.value.length === count) return entry;
	return only !== undefined && entry.value.length === 1
		? { ...entry, value: Array<R>(count).fill(only) }
		: null;
}
