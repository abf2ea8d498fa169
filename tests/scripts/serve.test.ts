import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../src/scripts/serve.js';

const outside = mkdtempSync(join(tmpdir(), 'serve-'));
const folder = join(outside, 'site');
const host = '127.0.0.1';
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
	mkdirSync(join(folder, 'practice'), { recursive: true });
	writeFileSync(join(outside, 'secret.txt'), 'secret');
	symlinkSync(join(outside, 'secret.txt'), join(folder, 'leak.txt'));
	for (const name of ['index.html', 'practice/index.html', 'code.js', 'look.css', 'a b.svg']) {
		writeFileSync(join(folder, name), name);
	}
	server = await serve({ folder, port: 0, host });
});

afterAll(() => {
	server.close();
	rmSync(outside, { recursive: true });
});

test.each([
	['/', 200, 'text/html; charset=utf-8'],
	['/?task=RL2', 200, 'text/html; charset=utf-8'],
	['/practice/', 200, 'text/html; charset=utf-8'],
	['/code.js', 200, 'text/javascript; charset=utf-8'],
	['/look.css', 200, 'text/css; charset=utf-8'],
	['/a%20b.svg', 200, 'image/svg+xml'],
	['/nothing', 404, 'text/html; charset=utf-8'],
	['/../secret.txt', 404, 'text/html; charset=utf-8'],
	['/..%2fsecret.txt', 404, 'text/html; charset=utf-8'],
	['/practice/../../secret.txt', 404, 'text/html; charset=utf-8'],
	['/leak.txt', 404, 'text/html; charset=utf-8'],
	['/%00', 404, 'text/html; charset=utf-8'],
	['/%E0%A4%A', 404, 'text/html; charset=utf-8']
])('%s answers %i as %s', async (path, status, type) => {
	expect(await get(path)).toMatchObject({ status, type });
});

test('a folder without its slash leads to the one with it, the query kept', async () => {
	expect(await get('/practice?task=RL2')).toMatchObject({
		status: 308,
		location: '/practice/?task=RL2'
	});
});

test('a taken port is left for the next free one', async () => {
	const second = await serve({ folder, port: server.port, host });
	second.close();
	expect(second.port).toBeGreaterThan(server.port);
});

/** Asks for a path exactly as written: a URL would take the `..` out. */
function get(path: string) {
	return new Promise((resolve, reject) => {
		const asked = request({ host, port: server.port, path }, (response) => {
			const { 'content-type': type, location } = response.headers;
			response.resume();
			resolve({ status: response.statusCode, type, location });
		});
		asked.on('error', reject).end();
	});
}
