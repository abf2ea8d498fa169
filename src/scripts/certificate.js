import { execFileSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { BlockList, isIP } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Advice } from './project.js';

/**
 * What a server needs to speak https, as PEM text, and the file that devices take up to trust it.
 *
 * @typedef {{ key: string, cert: string, authority: string }} Certificate
 */

// Some phones take no longer one for a server, whoever signed it.
const days = 397;

// The addresses that never leave a local network (RFC 1918, RFC 3927), and this machine itself.
const privateNetworks = /** @type {const} */ ([
	['10.0.0.0', 8, '255.0.0.0'],
	['172.16.0.0', 12, '255.240.0.0'],
	['192.168.0.0', 16, '255.255.0.0'],
	['169.254.0.0', 16, '255.255.0.0'],
	['127.0.0.0', 8, '255.0.0.0']
]);
const isPrivate = new BlockList();
for (const [network, prefix] of privateNetworks) isPrivate.addSubnet(network, prefix);

/*
 * Whoever holds its key could pose as any server to the devices that trust it. So it may sign for
 * private networks and for nothing else.
 */
const authorityExtensions = `basicConstraints = critical, CA:TRUE, pathlen:0
keyUsage = critical, keyCertSign
subjectKeyIdentifier = hash
nameConstraints = critical, @within
[within]
permitted;DNS = localhost
${privateNetworks.map(([network, , mask], at) => `permitted;IP.${at} = ${network}/${mask}`).join('\n')}`;

/**
 * A certificate for these names and addresses, signed by an authority of this machine's own. Both are
 * kept in the folder, and made when they are missing, about to end, or for other addresses: the
 * authority stays, so devices that trust it need nothing new. An address outside private networks is
 * left out, for none would trust it.
 *
 * @param {readonly string[]} addresses of this machine, IPv4
 * @param {string} folder
 * @returns {Certificate}
 */
export function certificateFor(addresses, folder) {
	const reached = addresses.filter((address) => isPrivate.check(address));
	const hosts = ['localhost', '127.0.0.1', ...reached];
	mkdirSync(folder, { recursive: true, mode: 0o700 });
	const file = (/** @type {string} */ name) => join(folder, name);
	if (!isGood(file('authority.crt'), [])) {
		makeKey(file('authority.key'));
		sign(folder, 'authority', '/CN=Bucktail on this computer', authorityExtensions);
	}
	if (
		!isGood(file('server.crt'), hosts) ||
		!isSignedBy(file('server.crt'), file('authority.crt'))
	) {
		makeKey(file('server.key'));
		sign(folder, 'server', '/CN=Bucktail', serverExtensions(hosts));
	}
	return {
		key: readFileSync(file('server.key'), 'utf8'),
		cert: readFileSync(file('server.crt'), 'utf8'),
		authority: readFileSync(file('authority.crt'), 'utf8')
	};
}

/** @param {readonly string[]} hosts */
function serverExtensions(hosts) {
	const names = hosts.map((host) => `${isIP(host) ? 'IP' : 'DNS'}:${host}`);
	return `basicConstraints = critical, CA:FALSE
keyUsage = critical, digitalSignature
extendedKeyUsage = serverAuth
subjectAltName = ${names.join(', ')}`;
}

/** @param {string} file @param {readonly string[]} hosts that it must be for */
function isGood(file, hosts) {
	if (!existsSync(file) || !existsSync(file.replace(/crt$/, 'key'))) return false;
	const certificate = new X509Certificate(readFileSync(file));
	const week = 7 * 24 * 60 * 60 * 1000;
	if (Date.parse(certificate.validTo) < Date.now() + week) return false;
	return hosts.every((host) => certificate[isIP(host) ? 'checkIP' : 'checkHost'](host));
}

/** @param {string} file @param {string} authority */
function isSignedBy(file, authority) {
	const { publicKey } = new X509Certificate(readFileSync(authority));
	return new X509Certificate(readFileSync(file)).verify(publicKey);
}

/** @param {string} file */
function makeKey(file) {
	openssl(['genpkey', '-algorithm', 'EC', '-pkeyopt', 'ec_paramgen_curve:P-256', '-out', file]);
}

/**
 * Signs `<name>.key` as `<name>.crt`: the authority by itself, a server by the authority.
 *
 * @param {string} folder @param {string} name @param {string} subject @param {string} extensions
 */
function sign(folder, name, subject, extensions) {
	const work = mkdtempSync(join(tmpdir(), 'certificate-'));
	try {
		const [request, settings] = [join(work, 'request'), join(work, 'settings')];
		writeFileSync(settings, `[req]\ndistinguished_name = dn\n[dn]\n[made]\n${extensions}\n`);
		const key = join(folder, `${name}.key`);
		openssl(['req', '-new', '-config', settings, '-key', key, '-subj', subject, '-out', request]);
		const signer =
			name === 'authority'
				? ['-signkey', key]
				: ['-CA', join(folder, 'authority.crt'), '-CAkey', join(folder, 'authority.key')];
		const made = ['-extfile', settings, '-extensions', 'made', '-out', join(folder, `${name}.crt`)];
		const serial = ['-set_serial', String(Date.now())];
		openssl(['x509', '-req', '-in', request, '-days', String(days), ...serial, ...signer, ...made]);
	} finally {
		rmSync(work, { recursive: true });
	}
}

/** @param {string[]} args */
function openssl(args) {
	try {
		execFileSync('openssl', args, { stdio: ['ignore', 'ignore', 'pipe'] });
	} catch (error) {
		const missing = error instanceof Error && 'code' in error && error.code === 'ENOENT';
		if (missing) throw new Advice('https needs the program openssl: install it, then start again.');
		throw error;
	}
}
