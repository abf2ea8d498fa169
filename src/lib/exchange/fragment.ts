/*
 * Anything that can be written as JSON, as the fragment of an address: version, form and the
 * deflated text in base64url, with points between. What stands after `#` never leaves the browser.
 *
 * The form is `z`: a zlib stream (RFC 1950), which has a check of its own at its end. Links of
 * version 1 hold a bare deflate stream, and in place of the form the CRC-32 of the text.
 */

/** Longest fragment that is looked at, in characters. */
const maxPacked = 16_000;

/** Most that a fragment may hold once inflated, in bytes. */
const maxUnpacked = 64 * 1024;

/** Bytes inflated at a time: each gives up to 1,032, so together hardly more than the most. */
const slice = 63;

export type Unpacked =
	| { readonly ok: true; readonly value: unknown }
	| { readonly ok: false; readonly reason: 'damaged' | 'newer' };

/** @param version whole number from 2 */
export async function packed(version: number, value: unknown): Promise<string> {
	const bytes = new TextEncoder().encode(JSON.stringify(value));
	const deflated = await through(
		new Blob([bytes]).stream(),
		new CompressionStream('deflate'),
		Infinity
	);
	return `${version}.z.${base64url(deflated)}`;
}

/** Reads a fragment, with or without its `#`; never throws, whatever the text is. */
export async function unpacked(version: number, fragment: string): Promise<Unpacked> {
	const parts = /^#?([1-9]\d{0,3})\.([0-9a-z]{1,7})\.([\w-]+)$/.exec(fragment);
	if (!parts || fragment.length > maxPacked) return damaged;
	const [, made = '', form = '', body = ''] = parts;
	if (Number(made) > version) return { ok: false, reason: 'newer' };
	try {
		const deflated = bytesOf(body);
		// The last letter can hold bits that stand for nothing: they must be as they were written.
		if (base64url(deflated) !== body) return damaged;
		const bytes = await (made === '1' ? firstEdition : inflated)(deflated, form);
		const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
		return { ok: true, value: JSON.parse(text) };
	} catch {
		return damaged;
	}
}

const damaged = { ok: false, reason: 'damaged' } as const;

/** The bytes in a zlib stream; throws where its own check does not hold. */
function inflated(body: Uint8Array<ArrayBuffer>, form: string): Promise<Uint8Array> {
	if (form !== 'z') throw new Error(`no such form: ${form}`);
	return through(inSlices(body), new DecompressionStream('deflate'), maxUnpacked);
}

/** The bytes in a bare deflate stream; throws where they have another CRC-32. */
async function firstEdition(body: Uint8Array<ArrayBuffer>, sum: string): Promise<Uint8Array> {
	const bytes = await through(inSlices(body), new DecompressionStream('deflate-raw'), maxUnpacked);
	// A gzip stream ends in the CRC-32 and the length of what it holds (RFC 1952, 2.3.1).
	const zipped = await through(new Blob([bytes]).stream(), new CompressionStream('gzip'), Infinity);
	const found = new DataView(zipped.buffer).getUint32(zipped.length - 8, true);
	if (found.toString(36) !== sum) throw new Error('another checksum');
	return bytes;
}

/** The bytes that come out of a stream; throws as soon as there are more than `limit`. */
async function through(
	source: ReadableStream<Uint8Array<ArrayBuffer>>,
	stream: CompressionStream | DecompressionStream,
	limit: number
): Promise<Uint8Array<ArrayBuffer>> {
	const reader = source.pipeThrough(stream).getReader();
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

/** The bytes a few at a time, as they are asked for: browsers inflate all they get at once. */
function inSlices(bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> {
	let at = 0;
	const pull = (controller: ReadableStreamDefaultController<Uint8Array<ArrayBuffer>>) => {
		if (at >= bytes.length) controller.close();
		else controller.enqueue(bytes.slice(at, (at += slice)));
	};
	return new ReadableStream({ pull }, { highWaterMark: 0 });
}

function base64url(bytes: Uint8Array): string {
	const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
	return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
	const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
	return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}
