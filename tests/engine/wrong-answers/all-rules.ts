import type { Rule } from './rule.ts';

const files = import.meta.glob<{ rules?: readonly Rule[] }>('./*/*.ts', { eager: true });

/** The rules of every family; each file in a topic's folder exports those of one. */
export const allRules: readonly Rule[] = Object.values(files).flatMap(({ rules }) => rules ?? []);
