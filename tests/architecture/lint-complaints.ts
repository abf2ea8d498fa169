import { ESLint } from 'eslint';
import { join } from 'node:path';
import { top } from '../../src/scripts/project.js';
import type { SourceFile } from './source-imports.ts';

const lint = new ESLint({
	cwd: top,
	overrideConfigFile: join(top, '.config/eslint.config.js')
});

/** The lint rules that a text breaks when it stands at that path. */
export async function lintComplaints({ path, text }: SourceFile) {
	const results = await lint.lintText(text, { filePath: join(top, path) });
	return results.flatMap(({ messages }) => messages.map(({ ruleId }) => ruleId));
}
