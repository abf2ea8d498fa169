import type { Exact } from '../exact.ts';
import type { LengthUnit } from '../value.ts';
import type { Reading } from '../reading.ts';
import { listAnswers } from './answers/lists.ts';
import type { Kind } from './kind.ts';
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
export type ListKind<
	T extends number | string = number | string,
	R extends Exact | string = Exact | string
> = Kind<readonly T[], readonly R[]>;

/** Several values of a kind, in order; equal ones may be given once. */
export function listOf<T extends number | string, R extends Exact | string>(
	member: Listable<T, R>
): ListKind<T, R> {
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
		example: (units) => member.example(units),
		read: (text, units) => member.readAll(text, units),
		work: (text, units) => member.workAll(text, units),
		...listAnswers(member),
		differs: (ones, others, room) =>
			ones.length !== others.length || ones.some((one, i) => apart(one, others[i], room)),
		isSound: (values) => values.every((one) => member.isSound(one)),
		numbers: (values) => values.flatMap((one) => member.numbers(one)),
		map: (values, change) =>
			values.map((one, place) => member.map(one, (value) => change(value, place))),
		members: (values) => values,
		write: (values, units) => member.writeAll(values, units),
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
