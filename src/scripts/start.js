import './node-version.js';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt, site } from './build.js';
import { certificateFor } from './certificate.js';
import { ensureInstalled } from './install.js';
import { Advice, main, top } from './project.js';
import { authorityPath, serve } from './serve.js';

await main(async () => {
	const port = chosenPort();
	const { shared, secure } = options();
	await ensureInstalled();
	await ensureBuilt();
	const certificate = secure ? certificateFor(networkAddresses(), join(top, '.https')) : undefined;
	const host = shared ? undefined : '127.0.0.1';
	const server = await serve({ folder: site, port, host, certificate });
	const at = (/** @type {string} */ name) => `http${secure ? 's' : ''}://${name}:${server.port}/`;
	console.log(`Bucktail is ready: ${at('localhost')}`);
	if (shared) {
		const addresses = networkAddresses().map(at).join(' ');
		console.log(`On the local network: ${addresses || 'this machine has no address there'}`);
	}
	if (secure) {
		console.log(
			`A device trusts it once it has taken up ${join('.https', 'authority.crt')}, also at ${authorityPath} there.`
		);
	}
	process.once('SIGINT', server.close);
	process.once('SIGTERM', server.close);
	if (process.env.npm_lifecycle_event) whenParentEnds(server.close);
});

/**
 * npm passes a stop signal on to its shell, and the shell ends without passing it on to us.
 *
 * @param {() => void} stop
 */
function whenParentEnds(stop) {
	const parent = process.ppid;
	const watch = setInterval(() => {
		if (process.ppid !== parent) stop();
	}, 500);
	watch.unref();
}

function chosenPort() {
	const text = process.env.PORT || '4173';
	const port = Number(text);
	if (/^\d+$/.test(text) && port <= 65535) return port;
	throw new Advice(`PORT is "${text}": set it to a whole number from 0 to 65535.`);
}

/** Whether other machines on the local network may open the pages, and whether by https. */
function options() {
	const given = process.argv.slice(2);
	const strange = given.find((option) => !['--host', '--https'].includes(option));
	if (strange !== undefined) {
		throw new Advice(
			`npm start does not know “${strange}”: it takes npm start -- --host, and --https with it.`
		);
	}
	return { shared: given.includes('--host'), secure: given.includes('--https') };
}

function networkAddresses() {
	const all = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
	return all
		.filter(({ family, internal }) => family === 'IPv4' && !internal)
		.map(({ address }) => address);
}
