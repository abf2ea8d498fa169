import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { fingerprint } from './fingerprint.ts';
import kept from './fingerprints.json';

const families = await loadFamilies();
const stored: Readonly<Record<string, { rev: number; hash: string }>> = kept;

describe.each(families.map((family) => [family.id, family] as const))('%s', (_, family) => {
	test.each(levels)('level %i draws what it always drew', async (level) => {
		const was = stored[`${family.code}${level}`];
		expect(was?.rev, 'new, or of a new revision: npm run fingerprints').toBe(family.rev);
		expect(
			await fingerprint(family, level),
			'draws otherwise: undo that, or raise the revision in topic.ts, then npm run fingerprints'
		).toBe(was?.hash);
	});
});

test('no fingerprint is left of a family that is gone', () => {
	const known = families.flatMap(({ code }) => levels.map((level) => `${code}${level}`));
	expect(Object.keys(stored).filter((one) => !known.includes(one))).toEqual([]);
});
