import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { cards } from '../../src/lib/engine/families/topics.ts';
import { site } from '../../src/scripts/build.js';
import { familyLoads, noted } from '../../src/scripts/size.js';

/** Bytes after gzip: the most of JavaScript until a task of any family can be answered. */
const most = 70_000;

/** A panel is drawn by the methods of all its parts; what they share is put together for the others. */
const mostJoined: Readonly<Record<string, number>> = { 'panel/whole-panel': 77_000 };

/** Bytes that may come without a note. */
const unnoted = 300;

const loads = await familyLoads(site);
const known = JSON.parse(readFileSync(noted, 'utf8')) as Readonly<Record<string, number>>;

test('every family is weighed', () => {
	expect(Object.keys(loads).sort()).toEqual(cards.map(({ topic, id }) => `${topic}/${id}`).sort());
});

test.each(Object.entries(loads))('%s loads no more than was noted', (family, bytes) => {
	expect(bytes).toBeLessThanOrEqual(mostJoined[family] ?? most);
	const grown = bytes - (known[family] ?? 0);
	expect(
		grown,
		`${family} loads ${bytes} bytes until a task can be answered. If it must, note it: npm run weigh`
	).toBeLessThanOrEqual(unnoted);
});
