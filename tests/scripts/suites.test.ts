import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { countOf, failure, success, summary, timed } from '../../src/scripts/suites.js';

const scripts = new URL('../../src/scripts/', import.meta.url);

test('the last line counts what passed and failed in all suites', () => {
	const all = summary({
		lint: { ...success, seconds: 3 },
		types: { ...failure, seconds: 4 },
		unit: { passed: 7, failed: 2, seconds: 5 }
	});
	expect(all).toEqual({
		lines: [
			'lint      1 passed, 0 failed, 3 s',
			'types     0 passed, 1 failed, 4 s',
			'unit      7 passed, 2 failed, 5 s'
		],
		last: '8 passed, 3 failed',
		failed: true
	});
	expect(summary({ lint: { ...success, seconds: 3 } }).failed).toBe(false);
});

test('a suite that throws is told, and counts as failed', async () => {
	vi.spyOn(console, 'log').mockReturnValue();
	const told = vi.spyOn(console, 'error').mockReturnValue();
	onTestFinished(() => void vi.restoreAllMocks());
	const broken = new Error('broken');
	expect(await timed('unit', () => Promise.reject(broken))).toMatchObject(failure);
	expect(told).toHaveBeenCalledWith(broken);
});

const passing = { status: 'passed', assertionResults: [{ status: 'passed' }] };
const failing = { status: 'failed', assertionResults: [{ status: 'failed' }] };
const unread = { status: 'failed', assertionResults: [] };

test.each([
	['all pass', [passing], 0, true, { passed: 1, failed: 0 }],
	['a test fails', [passing, failing], 1, false, { passed: 1, failed: 1 }],
	['a file cannot be read', [passing, unread], 0, false, { passed: 1, failed: 1 }],
	['the runner fails with no test failed', [passing], 0, false, { passed: 1, failed: 1 }],
	['the runner crashed before it counted', null, 0, false, { passed: 0, failed: 1 }],
	['the runner says it passed and counted nothing', null, 0, true, { passed: 0, failed: 1 }]
])('%s', (_, testResults, numFailedTests, succeeded, count) => {
	const folder = mkdtempSync(join(tmpdir(), 'reports-'));
	onTestFinished(() => rmSync(folder, { recursive: true }));
	const report = join(folder, 'unit.json');
	if (testResults) {
		writeFileSync(report, JSON.stringify({ testResults, numFailedTests, numPassedTests: 1 }));
	}
	expect(countOf(report, succeeded)).toEqual(count);
});

test('a quiet program shows its output only when it fails, and then all of it', async () => {
	const output = await node(`
		const { run } = await import('${scripts.href}project.js');
		const quietly = (code) => run(process.execPath, ['-e', code], { quiet: true });
		console.log(await quietly('console.log("unseen")'));
		console.log(await quietly('console.log("x".repeat(200000)); console.error("last"); process.exitCode = 3'));`);
	expect(output).toMatch(/^true\nx{200000}\nlast\nfalse\n$/);
});

test.skipIf(process.platform === 'win32')('Ctrl-C ends what a quiet program started', async () => {
	const server = createServer().listen(0, '127.0.0.1');
	onTestFinished(() => void server.close());
	await once(server, 'listening');
	const { port } = server.address() as AddressInfo;
	const deep = `require('net').connect(${port}, '127.0.0.1')`;
	const between = `require('child_process').spawn(process.execPath, ['-e', ${JSON.stringify(deep)}])`;
	const program = started(`
		const { run } = await import('${scripts.href}project.js');
		await run(process.execPath, ['-e', ${JSON.stringify(between)}], { quiet: true });`);
	const [connection] = (await once(server, 'connection')) as [Socket];
	connection.resume().on('error', () => {});
	program.kill('SIGINT');
	const ended = [once(program, 'exit'), once(connection, 'close')];
	expect((await Promise.all(ended))[0]).toEqual([130, null]);
});

function started(code: string) {
	return spawn(process.execPath, ['--input-type=module', '-e', code]);
}

/** What a program prints, on both streams. */
async function node(code: string) {
	const program = started(code);
	let output = '';
	for (const stream of [program.stdout, program.stderr])
		stream.on('data', (piece: Buffer) => (output += piece.toString()));
	await once(program, 'close');
	return output;
}
