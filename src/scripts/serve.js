import { once } from 'node:events';
import { readFile, realpath, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { extname, join, posix, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { Advice } from './project.js';
import { notFoundPage } from './not-found.js';

/** @type {Readonly<Record<string, string>>} */
const types = {
	'.crt': 'application/x-x509-ca-cert',
	'.css': 'text/css; charset=utf-8',
	'.html': 'text/html; charset=utf-8',
	'.ico': 'image/x-icon',
	'.js': 'text/javascript; charset=utf-8',
	'.json': 'application/json; charset=utf-8',
	'.png': 'image/png',
	'.svg': 'image/svg+xml',
	'.txt': 'text/plain; charset=utf-8',
	'.webmanifest': 'application/manifest+json',
	'.webp': 'image/webp',
	'.woff': 'font/woff',
	'.woff2': 'font/woff2'
};

/** What is text, and comes to a third of its size compressed. Pictures and letters are compressed already. */
const compressible = /^(?:text|application)[/]|svg/;

const compress = promisify(gzip);

/** Where a server that speaks https hands out what devices need to trust it. */
export const authorityPath = '/bucktail-authority.crt';

/**
 * Serves a folder of built pages. A port that is taken is left for the next free one.
 *
 * @param {{ folder: string, port: number, host?: string,
 *   certificate?: import('./certificate.js').Certificate }} options port 0 takes any free port; host
 * left out opens the server to the network; with a certificate it speaks https
 * @returns {Promise<{ port: number, close: () => void }>}
 */
export async function serve({ folder, port, host, certificate }) {
	const root = await realpath(folder);
	/** @type {Compressed} */
	const compressed = new Map();
	/** @type {import('node:http').RequestListener} */
	const listener = (request, response) => {
		if (certificate && request.url === authorityPath) {
			response.writeHead(200, { 'content-type': typeOf('.crt') }).end(certificate.authority);
			return;
		}
		answer(root, compressed, request, response).catch(() => response.destroy());
	};
	const server = certificate ? createSecureServer(certificate, listener) : createServer(listener);
	const close = () => {
		server.close();
		server.closeAllConnections();
	};
	return { port: await listenFrom(server, port, host), close };
}

/**
 * @param {import('node:net').Server} server @param {number} first @param {string} [host]
 * @returns {Promise<number>} the port taken
 */
async function listenFrom(server, first, host) {
	for (let port = first; port <= 65535; port++) {
		if (await isTakenOnIpv6(port)) continue;
		const fault = await listen(server, port, host);
		if (!fault) return portOf(server);
		if (fault !== 'EADDRINUSE')
			throw new Advice(`Port ${port} cannot be used (${fault}): set PORT.`);
	}
	throw new Advice(`No port from ${first} up is free: set PORT to a lower one.`);
}

/**
 * Browsers try ::1 first for localhost, so a program there would answer in our place.
 *
 * @param {number} port
 */
async function isTakenOnIpv6(port) {
	const probe = createServer();
	const fault = await listen(probe, port, '::1');
	probe.close();
	return fault === 'EADDRINUSE';
}

/**
 * @param {import('node:net').Server} server @param {number} port @param {string} [host]
 * @returns {Promise<string | undefined>} the error's code when it could not listen
 */
async function listen(server, port, host) {
	try {
		server.listen(port, host);
		await once(server, 'listening');
		return undefined;
	} catch (error) {
		return /** @type {NodeJS.ErrnoException} */ (error).code;
	}
}

/** @param {import('node:net').Server} server */
function portOf(server) {
	return /** @type {import('node:net').AddressInfo} */ (server.address()).port;
}

/**
 * Files as they were compressed, by path, so that a class that opens the same pages has each compressed once.
 *
 * @typedef {Map<string, { of: string, body: Promise<Buffer> }>} Compressed
 */

/**
 * @param {string} root @param {Compressed} compressed
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(root, compressed, request, response) {
	if (request.method !== 'GET' && request.method !== 'HEAD') {
		response.writeHead(405, { allow: 'GET, HEAD' }).end();
		return;
	}
	const [path = '/', query] = (request.url ?? '/').split('?', 2);
	const file = await fileAt(root, path);
	if (file) return sendFile(file, compressed, request, response);
	if (await fileAt(root, `${path}/`)) {
		const location = posix.normalize(`${path}/`) + (query ? `?${query}` : '');
		response.writeHead(308, { location }).end();
		return;
	}
	response.writeHead(404, { 'content-type': typeOf('.html') }).end(notFoundPage);
}

/**
 * The file that a path means, when it is one inside the root.
 *
 * @param {string} root @param {string} path as it came in the request
 * @returns {Promise<string | undefined>}
 */
async function fileAt(root, path) {
	try {
		const name = decodeURIComponent(path).replace(/\/$/, '/index.html');
		const file = await realpath(join(root, name));
		const isFile = (await stat(file)).isFile();
		return isFile && file.startsWith(root + sep) ? file : undefined;
	} catch {
		// A path that cannot be decoded or is not there names no file.
		return undefined;
	}
}

/**
 * @param {string} file @param {Compressed} compressed
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function sendFile(file, compressed, request, response) {
	// Files in this folder carry a hash of their content in their name.
	const lasting = file.includes(join('_app', 'immutable'));
	const type = typeOf(extname(file));
	const isText = compressible.test(type);
	const isSmall = isText && /\bgzip\b/.test(String(request.headers['accept-encoding']));
	const body = isSmall ? await compressedFile(file, compressed) : await readFile(file);
	response.writeHead(200, {
		'content-type': type,
		'content-length': body.length,
		'cache-control': lasting ? 'public, max-age=31536000, immutable' : 'no-cache',
		'x-content-type-options': 'nosniff',
		...(isText && { vary: 'accept-encoding' }),
		...(isSmall && { 'content-encoding': 'gzip' })
	});
	response.end(request.method === 'HEAD' ? undefined : body);
}

/**
 * @param {string} file @param {Compressed} compressed
 * @returns {Promise<Buffer>} again what it was, unless the file was written since
 */
async function compressedFile(file, compressed) {
	const { mtimeMs, size } = await stat(file);
	const of = `${mtimeMs} ${size}`;
	const known = compressed.get(file);
	if (known?.of === of) return known.body;
	const body = readFile(file).then((plain) => compress(plain));
	compressed.set(file, { of, body });
	// What could not be read is read again next time.
	body.catch(() => compressed.delete(file));
	return body;
}

/** @param {string} extension */
function typeOf(extension) {
	return types[extension.toLowerCase()] ?? 'application/octet-stream';
}
