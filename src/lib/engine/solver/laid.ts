import type { Origin, Outcome, Slip, SlipNotes } from './method.ts';
import type { SlipText } from './write.ts';

/* What is written in one file, laid into a method under the method's names. */

/**
 * A slip in a method. Its words are read where they are told, since that may be later.
 *
 * @param names of its formula, as written → in the method
 */
export function laidSlip(
	text: Pick<Slip, 'formula' | 'says'>,
	names: Origin['names'],
	rest: Omit<Slip, 'formula' | 'says'>
): Slip {
	return {
		...rest,
		get formula() {
			return renamed(text.formula, names);
		},
		get says() {
			return text.says;
		}
	};
}

/** What is known of a slip, without its words. */
export function notesOf({ rare, act, late }: SlipNotes): SlipNotes {
	return { rare, act, late };
}

/** An outcome in a method. */
export function laidOutcome(
	text: Pick<Outcome, 'shows' | 'cases'>,
	at: Outcome['at'],
	from: Origin
): Outcome {
	return {
		at,
		from,
		get shows() {
			return text.shows;
		},
		get cases() {
			return text.cases;
		}
	};
}

const identifier = /[A-Za-z]\w*/g;

/** Whether a slip is worked from a value. */
export function uses(text: SlipText, name: string): boolean {
	return (text.uses ?? text.formula.match(identifier) ?? []).includes(name);
}

/** A formula in other names, as text for people; what is worked is compiled elsewhere. */
export function renamed(formula: string, names: Readonly<Record<string, string>>): string {
	return formula.replace(identifier, (name) =>
		Object.hasOwn(names, name) ? (names[name] ?? name) : name
	);
}
