/*
 * Anything that can be written as JSON, as the fragment of an address: version, checksum and the
 * deflated text in base64url, with points between. What stands after `#` never leaves the browser.
 */

/** Longest fragment that is looked at, in characters. */
const maxPacked = 16_000;

/** Most that a fragment may hold once inflated, in bytes. */
const maxUnpacked = 64 * 1024;

export type Unpacked =
	| { readonly ok: true; readonly value: unknown }
	| { readonly ok: false; readonly reason: 'damaged' | 'newer' };

/** @param version whole number from 1 */
export async function packed(version: number, value: unknown): Promise<string> {
	const bytes = new TextEncoder().encode(JSON.stringify(value));
	const deflated = await through(bytes, new CompressionStream('deflate-raw'), Infinity);
	return `${version}.${checksum(bytes).toString(36)}.${base64url(deflated)}`;
}

/** Reads a fragment, with or without its `#`; never throws, whatever the text is. */
export async function unpacked(version: number, fragment: string): Promise<Unpacked> {
	const parts = /^#?([1-9]\d{0,3})\.([0-9a-z]{1,7})\.([\w-]+)$/.exec(fragment);
	if (!parts || fragment.length > maxPacked) return damaged;
	const [, made = '', sum = '', body = ''] = parts;
	if (Number(made) > version) return { ok: false, reason: 'newer' };
	try {
		const stream = new DecompressionStream('deflate-raw');
		const bytes = await through(bytesOf(body), stream, maxUnpacked);
		if (checksum(bytes).toString(36) !== sum) return damaged;
		const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
		return { ok: true, value: JSON.parse(text) };
	} catch {
		return damaged;
	}
}

const damaged = { ok: false, reason: 'damaged' } as const;

/** The bytes that come out of a stream; throws when there are more than `limit`. */
async function through(
	bytes: Uint8Array<ArrayBuffer>,
	stream: CompressionStream | DecompressionStream,
	limit: number
): Promise<Uint8Array> {
	const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
	const chunks: Uint8Array<ArrayBuffer>[] = [];
	let length = 0;
	for (;;) {
		const { done, value } = await reader.read();
		if (done) break;
		chunks.push(value);
		length += value.length;
		if (length > limit) {
			await reader.cancel();
			throw new Error(`longer than ${limit} bytes`);
		}
	}
	return new Uint8Array(await new Blob(chunks).arrayBuffer());
}

/** CRC-32 as in ISO 3309 and RFC 1952. */
function checksum(bytes: Uint8Array): number {
	let sum = ~0;
	for (const byte of bytes) {
		sum ^= byte;
		for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
	}
	return ~sum >>> 0;
}

function base64url(bytes: Uint8Array): string {
	const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
	return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
	const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
	return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}
