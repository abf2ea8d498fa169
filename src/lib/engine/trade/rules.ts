import type { Rule, Rules } from './rules/rule.ts';
import * as topics from './rules/index.ts';

export type { Rule };

/** The rules by topic, as they are listed for reading. */
export const rulesByTopic: Readonly<Record<string, Rules>> = topics;

export const rules: Rules = Object.assign({}, ...Object.values(topics));

export function ruleById(id: string): Rule {
	const rule = Object.hasOwn(rules, id) ? rules[id] : undefined;
	if (!rule) throw new Error(`no rule is called ${id}: write it in trade/rules/`);
	return rule;
}
