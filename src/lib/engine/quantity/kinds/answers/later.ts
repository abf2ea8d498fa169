import type { ReadValue } from '../../reading.ts';
import type { Value } from '../../value.ts';
import type { KindAnswers } from '../kind.ts';

type Answers = KindAnswers<Value, ReadValue>;
type Make = (...parts: never[]) => Answers;

const makers = new Map<string, Make>();

/** Hands over what was left out of the kinds on a page (all.ts). */
export function addAnswers(makes: Readonly<Record<string, Make>>): void {
	for (const [name, make] of Object.entries(makes)) makers.set(name, make);
}

/**
 * Stands in a kind on a page in place of what it is asked once something was answered
 * (src/plugins/lighten.ts): that is fetched with what methods tell of answers (families/tell.ts).
 * Asking too early throws.
 *
 * @param name of what makes the answers: `numberAnswers`
 */
export function laterAnswers(name: string): Make {
	return (...parts) => {
		let made: Answers | undefined;
		const there = () => {
			made ??= makers.get(name)?.(...parts);
			if (!made) throw new Error(`${name} has not been fetched: tell() first`);
			return made;
		};
		return {
			judge: (...asked) => there().judge(...asked),
			isWritten: (...asked) => there().isWritten(...asked),
			toValue: (...asked) => there().toValue(...asked),
			scaled: (...asked) => there().scaled(...asked),
			mathml: (...asked) => there().mathml(...asked)
		};
	};
}
