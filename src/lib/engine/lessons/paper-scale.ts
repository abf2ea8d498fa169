import type { Way } from './lesson.ts';
import { ruleById } from '../trade/rules.ts';

/**
 * How large a lesson is printed, so that all of it stands on one page: by how much there is to print,
 * since a page cannot be measured before it is printed. What would be too small to read on one page
 * takes two.
 */
export function paperScale(way: Way): number {
	const amount = amountOf(way);
	return scales.find(({ upTo }) => amount <= upTo)?.scale ?? 0.7;
}

const scales = [
	{ upTo: 960, scale: 1 },
	{ upTo: 1100, scale: 0.9 },
	{ upTo: 1350, scale: 0.8 },
	{ upTo: 2000, scale: 0.7 },
	{ upTo: 3000, scale: 0.65 }
] as const;

/** What is printed, in letters of a rule: a formula or a slip takes the place of so many. */
function amountOf({ method, hands, steps, chief }: Way): number {
	const ids = new Set(steps.flatMap((key) => method.steps[key]?.rule ?? []));
	const rules = [...ids].map((id) => ruleById(id).says.length + 60);
	const letters = rules.reduce((sum, length) => sum + length, 0);
	return letters + 60 * steps.length + 70 * chief.size + 60 * hands.length;
}
