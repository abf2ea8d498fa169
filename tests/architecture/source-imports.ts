import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse as parseSvelte } from 'svelte/compiler';
import { parseAst } from 'vite';
import { importSources } from '../../.config/import-sources.js';
import { importFault } from '../../.config/layers.js';
import { top } from '../../src/scripts/project.js';
import { filesIn } from './project-files.ts';

export interface SourceFile {
	readonly path: string;
	readonly text: string;
}

/** Every source file that can hold an import. */
export function sourceFiles(): SourceFile[] {
	return filesIn('src')
		.filter((path) => /\.(ts|js|svelte)$/.test(path))
		.map((path) => ({ path, text: readFileSync(join(top, path), 'utf8') }));
}

/** The imports of a file that the layer table refuses, each as one sentence. */
export function importFaults(file: SourceFile): string[] {
	return importsOf(file).flatMap((specifier) => importFault(file.path, specifier) ?? []);
}

/** The modules a file names, static, dynamic or as types; a computed one reads as `(computed)`. */
export function importsOf({ path, text }: SourceFile): string[] {
	const tree = path.endsWith('.svelte')
		? parseSvelte(text, { modern: true })
		: parseAst(text, { lang: 'ts' });
	return nodesIn(tree).flatMap((node) => {
		const sources = importSources[String(node.type)]?.(node) ?? [];
		return sources.map((source) => (typeof source?.value === 'string' ? source.value : computed));
	});
}

const computed = '/(computed)';

function nodesIn(value: unknown): Record<string, unknown>[] {
	if (Array.isArray(value)) return value.flatMap(nodesIn);
	if (!isRecord(value)) return [];
	const children = Object.entries(value).filter(([key]) => key !== 'parent');
	const below = children.flatMap(([, child]) => nodesIn(child));
	return typeof value.type === 'string' ? [value, ...below] : below;
}

function isRecord(value: unknown): value is Record<string, unknown> {
	return typeof value === 'object' && value !== null;
}
