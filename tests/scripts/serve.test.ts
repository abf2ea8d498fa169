import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { type IncomingHttpHeaders, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
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

test('text comes compressed to who can read it so, as it stands in its file now', async () => {
	const zipped = { 'accept-encoding': 'br, gzip' };
	const plain = await bodyOf('/code.js');
	expect(plain.body.toString()).toBe('code.js');
	expect(plain.headers).toMatchObject({ 'content-length': '7', vary: 'accept-encoding' });
	expect(plain.headers).not.toHaveProperty('content-encoding');
	for (const text of ['code.js', 'written anew', 'and again']) {
		writeFileSync(join(folder, 'code.js'), text);
		const { headers, body } = await bodyOf('/code.js', zipped);
		expect(headers).toMatchObject({ 'content-encoding': 'gzip', vary: 'accept-encoding' });
		expect(headers['content-length']).toBe(String(body.length));
		expect(gunzipSync(body).toString()).toBe(text);
	}
	writeFileSync(join(folder, 'icon.png'), 'picture');
	const picture = await bodyOf('/icon.png', zipped);
	expect(picture.headers).not.toHaveProperty('content-encoding');
	expect(picture.body.toString()).toBe('picture');
});

test('a taken port is left for the next free one', async () => {
	const second = await serve({ folder, port: server.port, host });
	second.close();
	expect(second.port).toBeGreaterThan(server.port);
});

function bodyOf(path: string, headers: Record<string, string> = {}) {
	return new Promise<{ headers: IncomingHttpHeaders; body: Buffer }>((resolve, reject) => {
		const asked = request({ host, port: server.port, path, headers }, (response) => {
			const parts: Buffer[] = [];
			response.on('data', (part: Buffer) => parts.push(part));
			response.on('end', () => resolve({ headers: response.headers, body: Buffer.concat(parts) }));
		});
		asked.on('error', reject).end();
	});
}

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
