import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/*
 * Contrast of the colours of both themes, by WCAG 2.2: 1.4.3 wants 4.5 to 1 for text, 1.4.11 wants
 * 3 to 1 for lines that a field, a button or a drawing is known by.
 */

const css = readFileSync('src/lib/ui/theme.css', 'utf8');
const [light = '', dark = ''] = [...css.matchAll(/:root \{([^}]*)\}/g)].map(([, inside]) => inside);

/** The colours that a theme sets, by name. */
function colours(text: string): Map<string, string> {
	return new Map(
		[...text.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [
			name,
			hex
		])
	);
}

function luminance(hex: string): number {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
		return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
	const [more = 0, less = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
	return (more + 0.05) / (less + 0.05);
}

const texts = ['ink', 'ink-soft', 'dye', 'accept', 'rework', 'caution', 'primer'];
const words: readonly (readonly [string, string])[] = [
	...texts.flatMap((text) => [[text, 'sheet'] as const, [text, 'bench'] as const]),
	['on-primer', 'primer'],
	['on-rivet', 'rivet'],
	['sheet', 'ink'],
	...['primer', 'dye', 'rework', 'caution'].flatMap((name) => [
		[name, `${name}-wash`] as const,
		['ink', `${name}-wash`] as const
	])
];
/** Lettering and dimension lines over sheets and rivets. */
const overMetal = ['metal-a', 'metal-b', 'metal-c', 'rivet'].map(
	(metal) => ['ink', metal] as const
);

test('a colour is as light as it looks', () => {
	expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 6);
	expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.478, 3);
});

describe.each([
	['light', colours(light)],
	['dark', new Map([...colours(light), ...colours(dark)])]
])('the %s theme', (_, theme) => {
	const of = (name: string) => theme.get(name) ?? expect.fail(`no colour ${name}`);

	test.each(words)('%s can be read on %s', (text, ground) => {
		expect(contrast(of(text), of(ground))).toBeGreaterThanOrEqual(4.5);
	});

	test.each(overMetal)('lines of %s stand out on %s', (line, ground) => {
		expect(contrast(of(line), of(ground))).toBeGreaterThanOrEqual(3);
	});
});
