import { resolve } from 'node:path';
import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { maxWorkers, testProjects } from './.config/test-projects.ts';
import { compileMethods } from './src/plugins/compile-methods.ts';
import { firstChunk } from './src/plugins/first-chunk.ts';
import { lateStyles } from './src/plugins/late-styles.ts';
import { lighten } from './src/plugins/lighten.ts';
import { workAhead } from './src/plugins/work-ahead.ts';

/** The page whose first load is kept small, and what stands around it. */
const firstPage = ['practice/+page', '+layout'].map((name) =>
	resolve(import.meta.dirname, `src/routes/${name}.svelte`)
);

export default defineConfig({
	plugins: [
		compileMethods(),
		workAhead(),
		lighten(),
		firstChunk(...firstPage),
		lateStyles(),
		sveltekit()
	],
	build: {
		assetsInlineLimit: 0,
		// The texts that the licences of what is built in ask to be handed on.
		license: { fileName: 'licenses.md' },
		// The lists of scripts to fetch ahead weigh more than they save: after the first visit every
		// file is on the device. Styles must come with the component they belong to.
		modulePreload: {
			polyfill: false,
			resolveDependencies: (_, files) => files.filter((file) => file.endsWith('.css'))
		}
	},
	// Sets are marked in a worker, which works methods as pages do. It is one file: of several, only
	// the first would be kept on the device for use without a network.
	worker: {
		format: 'es',
		plugins: () => [compileMethods()],
		rolldownOptions: { output: { codeSplitting: false } }
	},
	test: { projects: testProjects, maxWorkers, hideSkippedTests: true }
});
