import type { Family } from '../families/family.ts';
import { inSentence } from '../quantity/capital.ts';
import { topicIds, type TopicId } from '../families/topics.ts';
import type { Method } from '../solver/method.ts';
import { symbolOf } from '../solver/show-step.ts';
import { documents } from '../trade/documents.ts';
import { ruleById } from '../trade/rules.ts';
import { markedKeys, waysOf } from './lesson.ts';

/** One line of the formula sheet. */
export interface FormulaLine {
	readonly key: string;
	readonly label: string;
	/** Where it stands: `p. 4-59`, or `AC 43.13-1B, par. 4-56b`. */
	readonly source: string;
}

/** A method of the formula sheet, with the steps that no method before it has. */
export interface FormulaGroup {
	readonly method: Method;
	readonly title: string;
	readonly lines: readonly FormulaLine[];
	/** Symbols of steps that stand further up. */
	readonly above: readonly string[];
}

/** Methods by topic, as they are printed: every step once. */
export function formulaSheet(
	families: readonly Family[]
): { topic: TopicId; groups: FormulaGroup[] }[] {
	const printed = new Set<string>();
	return topicIds.map((topic) => ({
		topic,
		groups: families
			.filter((family) => family.topic === topic)
			.flatMap((family) =>
				waysOf(family).map(({ method }, i) =>
					groupOf(i === 0 ? family.name : titleOf(method, family), method, printed)
				)
			)
			.filter(({ lines }) => lines.length > 0)
	}));
}

/** Others of a family are called by what they are; one of the same title by what it begins with. */
function titleOf({ title, given }: Method, family: Family): string {
	if (title !== family.method.title) return title;
	const own = Object.keys(given).filter((key) => !(key in family.method.given));
	const labels = own.map((key) => inSentence(given[key]?.label ?? key));
	return labels.length === 0 ? title : `${title}, from the ${labels.join(' and the ')}`;
}

function groupOf(title: string, method: Method, printed: Set<string>): FormulaGroup {
	const keys = markedKeys(method);
	const fresh = keys.filter((key) => !printed.has(method.steps[key]?.skill ?? ''));
	for (const key of fresh) printed.add(method.steps[key]?.skill ?? '');
	return {
		method,
		title,
		lines: fresh.map((key) => ({
			key,
			label: method.steps[key]?.label ?? key,
			source: sourceOf(method.steps[key]?.rule ?? null)
		})),
		above: keys.filter((key) => !fresh.includes(key)).map((key) => symbolOf(method, key))
	};
}

/** The first source of a rule, short: the handbook's pages need no name. */
function sourceOf(rule: string | null): string {
	const [source] = rule === null ? [] : ruleById(rule).sources;
	if (!source) return '';
	if (source.standing === 'practice') return 'common practice';
	if (source.document === 'airframe') return source.at.replace(/^ch\. 4, /, '');
	const [name = ''] = documents[source.document].split(',');
	return [name, source.at].filter(Boolean).join(', ');
}

/** A symbol and what it stands for. */
export interface SymbolMeaning {
	readonly symbol: string;
	readonly meaning: string;
}

/** What the symbols of the methods stand for, each once, where they are not words themselves. */
export function symbolsOf(families: readonly Family[]): SymbolMeaning[] {
	const found = new Map<string, Set<string>>();
	for (const { method } of families.flatMap(waysOf)) {
		for (const [key, { label, symbol }] of Object.entries({ ...method.given, ...method.steps })) {
			const written = symbol ?? (/^[A-Z]$/.test(key) ? key : null);
			if (written === null || !/^[A-Z]+$/.test(written)) continue;
			found.set(written, (found.get(written) ?? new Set()).add(inSentence(label)));
		}
	}
	return [...found]
		.map(([symbol, labels]) => ({ symbol, meaning: shortest([...labels]) }))
		.sort((a, b) => a.symbol.localeCompare(b.symbol));
}

function shortest(labels: readonly string[]): string {
	return labels.reduce((best, one) => (one.length < best.length ? one : best), labels[0] ?? '');
}
