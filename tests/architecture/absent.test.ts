import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { top } from '../../src/scripts/project.js';
import { filesIn } from './project-files.ts';

/*
 * What rows of the WCAG table in DEVELOPERS.md rest on not being there at all.
 */

/** Each row: criteria, what there is none of, how it would be written, and a line that is one. */
const absent: [criteria: string, what: string, written: RegExp, planted: string][] = [
	[
		'1.2.1 to 1.2.5, 1.4.2',
		'sound and video',
		/<(audio|video|embed|iframe)\b|<object\s|new Audio\b|AudioContext|speechSynthesis/,
		'<video controls>'
	],
	[
		'1.3.4',
		'a locked orientation',
		/orientation\.lock|"orientation"|orientation:/,
		'"orientation":'
	],
	[
		'1.3.5, 3.3.8',
		'fields for personal data and passwords',
		/type="(password|email|tel)"|autocomplete="(?!off)/,
		'<input type="email" />'
	],
	[
		'1.4.5',
		'images with letters',
		/<(img|image|canvas)\b|background-image: url/,
		'<img src="a.png" />'
	],
	[
		'2.2.2, 2.3.1',
		'a motion that goes on',
		/\binfinite\b|iteration-count|<marquee/,
		'spin 1s infinite'
	],
	[
		'2.5.2',
		'what a press does before it ends, but where something is dragged or the focus is kept',
		/onmousedown|ontouchstart|onpointerdown=\{(?!ongrab\}|\(event\) => (?:zoom\.down\(event\)|event\.preventDefault\(\))\})/,
		'onpointerdown={mark}'
	],
	[
		'1.3.3',
		'button or field that is told by its place, colour or shape alone',
		/\b(?:the|on your|to the) (?:left|right)(?:-hand)?(?: side)? of the (?:page|screen|window)|\b(?:red|green|blue|round|square) (?:button|box|field)s?\b/i,
		'Press the green button.'
	],
	[
		'2.5.4',
		'work by moving the device',
		/devicemotion|deviceorientation|Accelerometer/,
		'devicemotion'
	],
	[
		'3.2.1',
		'what happens by the focus alone, but that a link to copy is marked',
		/onfocus=\{(?!\(event\) => event\.currentTarget\.select\(\)\})/,
		'onfocus={() => goto(next)}'
	]
];

const files = [...filesIn('src'), ...filesIn('static')]
	.filter((path) =>
		/\.(svelte|html|css|webmanifest)$|^src\/(lib\/ui|lib\/app|routes)\/.*\.ts$/.test(path)
	)
	.map((path) => ({ path, text: readFileSync(join(top, path), 'utf8') }));

describe.each(absent)('%s: there is no %s', (_criteria, _what, written, planted) => {
	test('in the pages', () => {
		expect(files.length).toBeGreaterThan(100);
		expect(files.flatMap(({ path, text }) => (written.test(text) ? [path] : []))).toEqual([]);
	});

	test('and one would be found', () => {
		expect(written.test(planted)).toBe(true);
	});
});
