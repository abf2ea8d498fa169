/**
 * A new id: a random UUID (RFC 9562, version 4, section 5.4). `crypto.randomUUID` would do it too,
 * but a browser has that only on secure pages, and not on those of a local network.
 */
export function newId(): string {
	const bytes = crypto.getRandomValues(new Uint8Array(16));
	bytes.set([((bytes[6] ?? 0) & 0x0f) | 0x40], 6);
	bytes.set([((bytes[8] ?? 0) & 0x3f) | 0x80], 8);
	const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
	return hex.replace(/(.{8})(.{4})(.{4})(.{4})(.{12})/, '$1-$2-$3-$4-$5');
}
