import type { InverseSlip } from './method.ts';
import type { OutcomeText, SlipText } from './write.ts';
import { unitOf } from './compiled.ts';
import { toldOf } from './told.ts';

/*
 * What stands in a method's file on a page, in place of what is told later: written there by the
 * build (src/plugins/first-part.ts). Reading it before it has been fetched throws.
 */

/**
 * The slips of a step of a method or piece, by id: those at these places among the compiled ones.
 *
 * @param uses the names they are worked from, where not every method has them
 */
export function laterSlips(
	unit: string,
	from: number,
	to: number,
	uses: Readonly<Record<string, readonly string[]>> = {}
): Record<string, SlipText> {
	const compiled = Object.entries(unitOf(unit).slips).slice(from, to);
	const slips = compiled.map(([id, { rare = false, act, late }]): [string, SlipText] => [
		id,
		{
			rare,
			act,
			late,
			uses: uses[id] ?? [],
			get formula() {
				return toldOf(unit).slips[id]?.formula ?? '';
			},
			get says() {
				return toldOf(unit).slips[id]?.says ?? '';
			}
		}
	]);
	return Object.fromEntries(slips);
}

/** @param at the steps that each of its outcomes tells of */
export function laterOutcomes(unit: string, at: readonly (readonly string[])[]): OutcomeText[] {
	return at.map((keys, i) => ({
		at: keys,
		get shows() {
			return toldOf(unit).outcomes[i]?.shows ?? {};
		},
		get cases() {
			return toldOf(unit).outcomes[i]?.cases ?? {};
		}
	}));
}

/** Slips made the other way round, for the given that is asked for. */
export function laterInverse(
	unit: string,
	want: string,
	ids: readonly string[]
): Record<string, InverseSlip> {
	const slips = ids.map((id): [string, InverseSlip] => [
		id,
		{
			get formula() {
				return toldOf(unit).inverses[want]?.slips[id]?.formula ?? '';
			},
			get says() {
				return toldOf(unit).inverses[want]?.slips[id]?.says ?? '';
			}
		}
	]);
	return Object.fromEntries(slips);
}
