import type { Exact } from '../../exact.ts';
import type { Entry, Judgement, KindAnswers } from '../kind.ts';
import type { Listable } from '../list.ts';

/** What several values of a kind are asked once something was answered. */
export function listAnswers<T extends number | string, R extends Exact | string>(
	member: Listable<T, R>
): KindAnswers<readonly T[], readonly R[]> {
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
	return {
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
		toValue(entry, values) {
			const ones = (values ? fitted(entry, values.length) : entry)?.value;
			const made = ones?.map((value) => member.toValue({ value, grain: entry.grain }));
			return made?.filter((one) => one !== null) ?? null;
		},
		scaled: ({ value, grain }, factor) => ({
			value: value.map((one) => member.scaled({ value: one, grain }, factor).value),
			grain: grain * factor.valueOf()
		}),
		mathml: (values, units) => values.map((one) => member.mathml(one, units)).join('<mo>,</mo>')
	};
}

function fitted<R>(entry: Entry<readonly R[]>, count: number): Entry<readonly R[]> | null {
	const [only] = entry.value;
	if (entry.value.length === count) return entry;
	return only !== undefined && entry.value.length === 1
		? { ...entry, value: Array<R>(count).fill(only) }
		: null;
}
