import { defineConfig } from 'vite';
import { compileMethods } from '../src/plugins/compile-methods.ts';
import { builtFolder, filesBelow } from './below-marking.ts';

/** Builds what marking stands on, file by file: its tests load that for every mutant. */
export default defineConfig({
	plugins: [compileMethods()],
	publicDir: false,
	logLevel: 'warn',
	build: {
		ssr: true,
		outDir: builtFolder,
		target: 'node20',
		minify: false,
		rolldownOptions: {
			input: [...filesBelow],
			output: { preserveModules: true, preserveModulesRoot: 'src/lib/engine' }
		}
	}
});
