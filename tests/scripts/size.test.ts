import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, onTestFinished, test } from 'vitest';
import { firstLoad } from '../../src/scripts/size.js';

test('a first load is what the page names and what that imports, each once, nothing later', async () => {
	const files = {
		'page/index.html': `
			<link href="../code/named.js" rel="modulepreload">
			<link rel="stylesheet" href="../code/look.css">
			<script>import("../code/started.js")</script>`,
		'code/named.js': `import { deep } from './deep.js'; deep(); import('./later.js');`,
		'code/started.js': `export * from './deep.js';`,
		'code/deep.js': `export const deep = () => 1;`,
		'code/later.js': `export {};`
	};
	const folder = siteWith(files);

	const { files: loaded, bytes } = await firstLoad(folder, 'page/index.html');

	const expected = ['code/named.js', 'code/deep.js', 'code/started.js'] as const;
	expect(loaded).toEqual(expected);
	const weights = expected.map((file) => gzipSync(files[file], { level: 9 }).length);
	expect(bytes).toBe(weights.reduce((a, b) => a + b));
});

function siteWith(files: Record<string, string>): string {
	const folder = mkdtempSync(join(tmpdir(), 'site-'));
	onTestFinished(() => rmSync(folder, { recursive: true }));
	for (const [path, text] of Object.entries(files)) {
		mkdirSync(dirname(join(folder, path)), { recursive: true });
		writeFileSync(join(folder, path), text);
	}
	return folder;
}
