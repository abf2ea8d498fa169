import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ruleById, rules, rulesByTopic } from '../../../src/lib/engine/trade/rules.ts';

test('every file of rules is listed, by the topic it is named after', () => {
	const folder = new URL('../../../src/lib/engine/trade/rules/', import.meta.url);
	const files = readdirSync(folder).filter((name) => !['index.ts', 'rule.ts'].includes(name));
	const names = files.map((name) => name.replace('.ts', ''));
	const unlisted = names.filter((name) => !Object.hasOwn(rulesByTopic, name));
	expect(unlisted.map((name) => `add ${name}.ts to trade/rules/index.ts`)).toEqual([]);
	const astray = Object.keys(rulesByTopic).filter((topic) => !names.includes(topic));
	expect(astray.map((topic) => `the rules of ${topic} must stand in ${topic}.ts`)).toEqual([]);
});

test('no id of a rule stands in two topics', () => {
	const ids = Object.values(rulesByTopic).flatMap((topic) => Object.keys(topic));
	expect(ids).toHaveLength(new Set(ids).size);
	expect(ids.sort()).toEqual(Object.keys(rules).sort());
});

test('every rule is a sentence with a source', () => {
	for (const [id, { says, sources }] of Object.entries(rules)) {
		expect(says, id).toMatch(/^\S.*\.$/);
		expect(sources.length, id).toBeGreaterThan(0);
	}
});

test('an unknown rule is told with what to do', () => {
	expect(ruleById('bend.k').says).toMatch(/^K is/);
	expect(() => ruleById('bend.q')).toThrow('no rule is called bend.q: write it in trade/rules/');
	expect(() => ruleById('constructor')).toThrow('no rule is called constructor');
});
