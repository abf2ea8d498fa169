/** Bytes that are looked at to tell how a text without a mark at its start is written. */
const looked = 64;

/**
 * The text in a file, in whatever way of writing programs of an office save it: UTF-8, UTF-16 of
 * either order, with a mark at its start or without, or else Windows-1252.
 */
export function textIn(bytes: Uint8Array): string {
	const sixteen = inUtf16(bytes);
	if (sixteen !== null) return new TextDecoder(sixteen).decode(bytes);
	try {
		return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
	} catch {
		return new TextDecoder('windows-1252').decode(bytes);
	}
}

function inUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
	const [first, second] = bytes;
	if (first === 0xff && second === 0xfe) return 'utf-16le';
	if (first === 0xfe && second === 0xff) return 'utf-16be';
	// Every other byte of plain letters is zero.
	const start = bytes.subarray(0, looked);
	const zeros = (odd: number) => start.filter((byte, i) => i % 2 === odd && byte === 0).length;
	const few = start.length / 4;
	if (zeros(1) > few && zeros(0) === 0) return 'utf-16le';
	return zeros(0) > few && zeros(1) === 0 ? 'utf-16be' : null;
}
