import { defineConfig } from 'vitest/config';
import { compileMethods } from '../src/plugins/compile-methods.ts';

/** The fast tests of marking alone: every mutant runs those that reach it. */
export default defineConfig({
	plugins: [compileMethods()],
	test: {
		name: 'mutants',
		environment: 'node',
		isolate: false,
		// A busy machine fails none.
		testTimeout: 60_000,
		include: ['tests/engine/marking/*.test.ts'],
		// Whole families are drawn there: seconds for every mutant.
		exclude: ['tests/engine/marking/lists.test.ts']
	}
});
