import { afterEach, expect, test, vi } from 'vitest';
import { packed, unpacked } from '../../src/lib/exchange/fragment.ts';

/*
 * A browser inflates the whole of what it is given at a time, however little of it is read. So
 * what must be small is what it is given.
 */

/** How many bytes have been given to be inflated. */
let taken = 0;

/** Counts what goes into the platform's stream. */
function count(): void {
	const Plain = DecompressionStream;
	taken = 0;
	vi.stubGlobal(
		'DecompressionStream',
		class {
			readonly writable;
			readonly readable;
			constructor(format: CompressionFormat) {
				const counter = new TransformStream<Uint8Array<ArrayBuffer>>({
					transform(chunk, controller) {
						taken += chunk.length;
						controller.enqueue(chunk);
					}
				});
				this.writable = counter.writable;
				this.readable = counter.readable.pipeThrough(new Plain(format));
			}
		}
	);
}

afterEach(() => vi.unstubAllGlobals());

/** Ten megabytes in a fragment that is short enough. */
const bomb = await packed(2, ' '.repeat(10 * 2 ** 20));

/** The same in the form of the first edition: without the two bytes before and the four behind. */
function asFirstEdition(fragment: string): string {
	const zlib = atob(fragment.slice(4).replaceAll('-', '+').replaceAll('_', '/'));
	const raw = btoa(zlib.slice(2, -4)).replaceAll('+', '-').replaceAll('/', '_');
	return `1.0.${raw.replace(/=+$/, '')}`;
}

test.each([
	['now', bomb],
	['by the first edition', asFirstEdition(bomb)]
])('a fragment that swells, made %s, is left at the limit', async (_, fragment) => {
	expect(fragment.length).toBeLessThan(16_000);
	count();
	expect(await unpacked(2, fragment)).toEqual({ ok: false, reason: 'damaged' });
	expect(taken).toBeGreaterThan(0);
	// A byte gives 1,032 at most: hardly half a megabyte of the ten.
	expect(taken).toBeLessThan(512);
});
