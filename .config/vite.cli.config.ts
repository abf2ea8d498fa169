import { defineConfig } from 'vite';
import { compileMethods } from '../src/plugins/compile-methods.ts';

/** Builds the command line into one program that needs nothing but Node. */
export default defineConfig({
	plugins: [compileMethods()],
	publicDir: false,
	ssr: { noExternal: true },
	build: {
		ssr: 'src/cli/bucktail.ts',
		outDir: 'build/cli',
		target: 'node20',
		rolldownOptions: {
			output: { banner: ({ isEntry }) => (isEntry ? '#!/usr/bin/env node' : '') }
		}
	}
});
