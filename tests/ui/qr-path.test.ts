import { createRequire } from 'node:module';
import type jsqr from 'jsqr';
import { expect, test } from 'vitest';
import { qrPath } from '../../src/lib/ui/sets/qr-path.ts';

// Its types tell of a module, and it is none.
const loaded: { readonly default: typeof jsqr } = createRequire(import.meta.url)('jsqr');

/** Pixels a module is drawn with. */
const scale = 4;

/** The path as a picture that a reader takes: black on white, four bytes a pixel. */
function pictureOf({ size, path }: ReturnType<typeof qrPath>) {
	const width = size * scale;
	const pixels = new Uint8ClampedArray(width * width * 4).fill(255);
	for (const [, x = '', y = '', length = ''] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
		const [left, top] = [Number(x) * scale, Number(y) * scale];
		for (let row = top; row < top + scale; row++) {
			for (let column = left; column < left + Number(length) * scale; column++) {
				pixels.fill(0, 4 * (row * width + column), 4 * (row * width + column) + 3);
			}
		}
	}
	return { pixels, width };
}

const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

test.each([60, 300, 600])('a reader takes the code of a link of %i characters', (length) => {
	const address = 'https://school.example.edu/bucktail/sets/#3.z.';
	const rest = Array.from(
		{ length: length - address.length },
		(_, i) => digits[(i * i + 7 * i) % 64]
	);
	const link = address + rest.join('');
	const code = qrPath(link);
	const { pixels, width } = pictureOf(code);
	const read = loaded.default(pixels, width, width);
	expect(read?.data).toBe(link);
	// What a phone needs to find it: four modules of white all around.
	expect(read?.location.topLeftCorner.x).toBeGreaterThanOrEqual(4 * scale - 1);
	expect(code.size).toBeLessThanOrEqual(101);
});
