import { defineConfig } from 'vitest/config';
import { compileMethods } from '../src/plugins/compile-methods.ts';
import { takeBuilt } from './below-marking.ts';

/** The fast tests of marking alone: every mutant runs those that reach it. */
export default defineConfig({
	plugins: [takeBuilt(), compileMethods()],
	test: {
		name: 'mutants',
		environment: 'node',
		isolate: false,
		// A busy machine fails none.
		testTimeout: 60_000,
		include: ['tests/engine/marking/*.test.ts'],
		// Whole families are drawn there, for every mutant.
		exclude: ['tests/engine/marking/{lists,printed-k}.test.ts']
	}
});
