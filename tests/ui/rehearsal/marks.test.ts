import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { composeRehearsal } from '../../../src/lib/engine/sets/rehearsal.ts';
import { saySlips, share } from '../../../src/lib/ui/rehearsal/marks.ts';

const families = await loadFamilies();

test('what lies behind a wrong option is said for every question', () => {
	const kinds = new Set<string>();
	for (const seed of ['one', 'two', 'three', 'four', 'five']) {
		for (const { task, options } of composeRehearsal(seed, families, 60)) {
			for (const { cause } of options) {
				if (!cause) continue;
				const said = saySlips(task.method, cause);
				kinds.add(`${cause.kind} ${cause.slips.length}`);
				expect(said).toMatch(/^[A-Z0-9½¼].*[.]$/);
				expect(/^(One of (two|three)|Several) slips /.test(said.replace(':', ' '))).toBe(
					cause.kind === 'either'
				);
				expect(said.split(' Or: ').length).toBe(
					cause.kind === 'either' && cause.slips.length < 4 ? cause.slips.length : 1
				);
				expect(said).not.toContain('undefined');
			}
		}
	}
	expect([...kinds].sort()).toEqual(['either 2', 'either 3', 'either 4', 'slip 1', 'slip 2']);
});

test('shares are whole percents', () => {
	expect(share({ right: 21, of: 30 })).toBe(70);
	expect(share({ right: 1, of: 3 })).toBe(33);
	expect(share({ right: 0, of: 0 })).toBe(0);
});
