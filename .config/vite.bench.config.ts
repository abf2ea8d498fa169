import { defineConfig } from 'vite';
import { compileMethods } from '../src/plugins/compile-methods.ts';

/** The engine's bench as one program for Node, so that its methods are compiled as in the app. */
export default defineConfig({
	plugins: [compileMethods()],
	logLevel: 'warn',
	build: {
		ssr: 'tests/bench/engine/main.ts',
		outDir: '.reports/bench',
		emptyOutDir: true,
		target: 'node20',
		minify: false
	}
});
