import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import type { Fault } from './faults.ts';

const top = resolve(import.meta.dirname, '../..');
const copied = ['src', 'tests', '.config', 'package.json', 'vite.config.ts', 'svelte.config.js'];

/** Stored drawings and outcome sentences catch most; the others are run where these pass. */
const first = ['tests/engine/families/drawn.test.ts', 'tests/engine/outcomes'];
const others = ['families', 'methods', 'solver', 'marking', 'trade'].map(
	(folder) => `tests/engine/${folder}`
);

/** What came of a fault, in words. */
export interface Caught {
	readonly caught: boolean;
	readonly told: string;
}

/** A copy of the project to plant faults in, one after another. */
export function plantedCopy() {
	const copy = mkdtempSync(join(tmpdir(), 'bucktail-faults-'));
	for (const name of copied) cpSync(join(top, name), join(copy, name), { recursive: true });
	symlinkSync(join(top, 'node_modules'), join(copy, 'node_modules'));
	return {
		async tried({ file, find, replace }: Fault): Promise<Caught> {
			const path = join(copy, file);
			const text = readFileSync(path, 'utf8');
			const times = text.split(find).length - 1;
			if (times !== 1)
				return { caught: false, told: `NOT PLANTED: stands ${times} times in ${file}` };
			writeFileSync(
				path,
				text.replace(find, () => replace)
			);
			try {
				const failed = (await firstFailing(copy, first)) ?? (await firstFailing(copy, others));
				return failed ?? { caught: false, told: 'NOT CAUGHT' };
			} finally {
				writeFileSync(path, text);
			}
		},
		remove: () => rmSync(copy, { recursive: true, force: true })
	};
}

/** The parts of Vitest's JSON report that are read. */
interface Report {
	readonly testResults: readonly {
		/** Path of the test file. */
		readonly name: string;
		readonly message: string;
		readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
	}[];
}

/** The first failing test of these; null when all pass. A fault that does not load is no fault. */
async function firstFailing(copy: string, files: readonly string[]): Promise<Caught | null> {
	const report = join(copy, 'report.json');
	rmSync(report, { force: true });
	const vitest = join(copy, 'node_modules/vitest/vitest.mjs');
	const args = ['run', '--project', 'unit', '--bail', '1', '--reporter', 'json'];
	const child = spawn(process.execPath, [vitest, ...args, '--outputFile', report, ...files], {
		cwd: copy,
		env: { ...process.env, CI: 'true' },
		stdio: 'ignore'
	});
	const [status] = (await once(child, 'close')) as [number | null];
	if (status === 0) return null;
	const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report;
	for (const { name, assertionResults } of testResults) {
		const failed = assertionResults.find(({ status }) => status === 'failed');
		if (failed)
			return { caught: true, told: `${basename(name, '.test.ts')}: ${failed.fullName.trim()}` };
	}
	const message = testResults.map((result) => result.message).find(Boolean) ?? 'no report';
	return { caught: false, told: `DOES NOT RUN: ${message.split('\n')[0]}` };
}
