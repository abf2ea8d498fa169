import type { Fact, Job } from './fact.ts';
import { gaugeFacts } from './gauges.ts';
import { jointFacts } from './joints.ts';
import { rivetFacts } from './rivets.ts';
import { sheetFacts } from './sheets.ts';

export type { Fact, Job, Layer } from './fact.ts';

/**
 * What holds of the parts and jobs in tasks. Families draw by it, importing the file they need, and
 * tests/engine/families/parts-that-exist.test.ts holds every family to all of it.
 */
export const facts: readonly Fact[] = [...jointFacts, ...gaugeFacts, ...rivetFacts, ...sheetFacts];

/** The facts that a job breaks. */
export function broken(job: Job): readonly Fact[] {
	return facts.filter(({ holds }) => holds(job) === false);
}
