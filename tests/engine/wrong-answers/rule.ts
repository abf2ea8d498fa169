/** What is typed into the fields of one check, by step. */
export type Typed = Readonly<Record<string, string>>;

/**
 * What is typed, worked straight from the givens in inches, degrees and pounds: into the field of
 * the rule's key, or into several fields of one check. Null where it does not apply or comes out
 * right.
 */
type Answer<Given, Right> = (given: Given, right: Right) => string | Typed | null;

/** One thing that somebody at the bench does wrong, and what they type for it. */
export interface Rule<Given = unknown, Right = unknown> {
	readonly family: string;
	/** The step answered; in company, the first one that is wrong. */
	readonly key: string;
	/** What somebody does, and why. */
	readonly why: string;
	readonly rate: 'common' | 'rare';
	readonly answer: Answer<Given, Right>;
	/** What marking may truly say of it; none where the catalogue has no slip for it. */
	readonly names: readonly Name<Given>[];
}

/**
 * A true cause: a slip of the method by id, two together as `one+other`, or a kind of cause
 * (`rounding`, `unit`, `digits`, `other-step`, …), bare or with its particulars
 * (`other-step:grip`). A function where it hangs on the givens, empty where it is not true.
 */
export type Name<Given> = string | ((given: Given) => string);

/** The two ways to write a rule of a family, by how often it is met. */
interface Written<Given, Right> {
	readonly common: Write<Given, Right>;
	readonly rare: Write<Given, Right>;
}

type Write<Given, Right> = (
	key: keyof Right & string,
	why: string,
	answer: Answer<Given, Right>,
	...names: readonly Name<Given>[]
) => Rule;

/** Writes the rules of a family. Givens and right values keep the keys and units of its method. */
export function rulesOf<Given, Right>(family: string): Written<Given, Right> {
	const write =
		(rate: Rule['rate']): Write<Given, Right> =>
		(key, why, answer, ...names) =>
			sealed({ family, key, why, rate, answer, names });
	return { common: write('common'), rare: write('rare') };
}

/**
 * The same rules, where those that fill in the field of `key` alone stand behind right entries: whoever comes
 * to it has filled in the fields before.
 */
export function behind<Right>(
	key: keyof Right & string,
	before: (right: Right) => Typed,
	rules: readonly Rule[]
): Rule[] {
	const answered =
		(answer: Rule['answer']): Rule['answer'] =>
		(given, right) => {
			const typed = answer(given, right);
			return typeof typed === 'string' ? { ...before(right as Right), [key]: typed } : typed;
		};
	return rules.map((rule) =>
		rule.key === key ? { ...rule, answer: answered(rule.answer) } : rule
	);
}

/** Which values a family draws is known to its own file only: the types end here. */
function sealed<Given, Right>(rule: Rule<Given, Right>): Rule {
	return rule as unknown as Rule;
}

/** The true causes of an answer to a task with these givens. */
export function namesOf({ names }: Rule, given: unknown): string[] {
	return names
		.map((name) => (typeof name === 'string' ? name : name(given)))
		.filter((name) => name !== '');
}
