import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { get } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkServerIdentity } from 'node:tls';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { certificateFor } from '../../src/scripts/certificate.js';
import { authorityPath, serve } from '../../src/scripts/serve.js';

const folder = mkdtempSync(join(tmpdir(), 'https-'));
const keys = join(folder, '.https');
const certificate = certificateFor(['192.168.7.20'], keys);
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
	writeFileSync(join(folder, 'index.html'), 'the first page');
	server = await serve({ folder, port: 0, host: '127.0.0.1', certificate });
});

afterAll(() => {
	server.close();
	rmSync(folder, { recursive: true });
});

test('a device that trusts the authority gets the pages', async () => {
	expect(await fetched('127.0.0.1', certificate.authority)).toBe('the first page');
	expect(await fetched('localhost', certificate.authority)).toBe('the first page');
	expect(await fetched('192.168.7.20', certificate.authority)).toBe('the first page');
});

test('one that does not is refused, and so is another address', async () => {
	await expect(fetched('127.0.0.1')).rejects.toThrow(/self-signed|verify/);
	await expect(fetched('192.168.7.21', certificate.authority)).rejects.toThrow(/IP: 192.168.7.21/);
});

test('the server hands out the authority; its key is for nobody else on this machine', async () => {
	expect(await fetched('localhost', certificate.authority, authorityPath)).toBe(
		certificate.authority
	);
	if (process.platform !== 'win32') {
		expect(statSync(join(keys, 'authority.key')).mode & 0o077).toBe(0);
	}
});

test('it is kept; a new address gets a new one by the same authority', () => {
	expect(certificateFor(['192.168.7.20'], keys)).toEqual(certificate);
	const moved = certificateFor(['10.1.2.3'], keys);
	expect(moved.cert).not.toBe(certificate.cert);
	expect(moved.authority).toBe(certificate.authority);
});

test('an address that is reached from everywhere is not signed for', () => {
	expect(certificateFor(['203.0.113.9'], keys).cert).toBe(certificateFor([], keys).cert);
});

/** What the server sends to somebody who asks for it by this name. */
function fetched(name: string, ca?: string, path = '/') {
	return new Promise<string>((resolve, reject) => {
		const options = {
			host: '127.0.0.1',
			port: server.port,
			path,
			ca,
			agent: false,
			checkServerIdentity: (_: string, peer: Parameters<typeof checkServerIdentity>[1]) =>
				checkServerIdentity(name, peer)
		};
		get(options, (response) => {
			let text = '';
			response.setEncoding('utf8');
			response.on('data', (piece) => (text += piece)).on('end', () => resolve(text));
		}).on('error', reject);
	});
}
