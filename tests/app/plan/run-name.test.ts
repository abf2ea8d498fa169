import { expect, test } from 'vitest';
import { plan } from '../../../src/lib/app/plan/plan.svelte.ts';
import type { Run } from '../../../src/lib/app/practice/run.ts';

const run: Run = {
	...{ id: '5a000000-0000-4000-8000-000000000009', topic: 'bends', level: 2, at: 0 },
	...{ day: 0, budget: 0, tasks: [{ number: 'BS2-002D-5J', standing: 'open' }] }
};

test('a run goes by its topic until a task of another topic joins it', () => {
	expect(plan.runName(run)).toBe('Bends');
	const joined = [...run.tasks, { number: 'RL2-002D-6D', standing: 'open' } as const];
	expect(plan.runName({ ...run, tasks: joined })).toBe('Mixed');
});
