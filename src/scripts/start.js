import './node-version.js';
import { networkInterfaces } from 'node:os';
import { ensureBuilt, site } from './build.js';
import { ensureInstalled } from './install.js';
import { Advice, main } from './project.js';
import { serve } from './serve.js';

await main(async () => {
	const port = chosenPort();
	const shared = isShared();
	await ensureInstalled();
	await ensureBuilt();
	const server = await serve({ folder: site, port, host: shared ? undefined : '127.0.0.1' });
	console.log(`Bucktail is ready: http://localhost:${server.port}/`);
	if (shared) {
		const addresses = networkAddresses().map((host) => `http://${host}:${server.port}/`);
		console.log(
			`On the local network: ${addresses.join(' ') || 'this machine has no address there'}`
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

/** Whether other machines on the local network may open the pages. */
function isShared() {
	const [option, ...rest] = process.argv.slice(2);
	if (option === undefined) return false;
	if (option === '--host' && rest.length === 0) return true;
	throw new Advice('npm start takes one option, written: npm start -- --host');
}

function networkAddresses() {
	const all = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
	return all
		.filter(({ family, internal }) => family === 'IPv4' && !internal)
		.map(({ address }) => address);
}
