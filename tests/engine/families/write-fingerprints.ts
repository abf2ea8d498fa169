import { readFileSync, writeFileSync } from 'node:fs';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { fingerprint } from './fingerprint.ts';

/*
 * Writes the fingerprints of families that are new or of a new revision. One that changed under
 * the same revision is left as it is, so that its test goes on failing until the revision is
 * raised.
 */

const file = new URL('./fingerprints.json', import.meta.url);
const kept = JSON.parse(readFileSync(file, 'utf8')) as Record<
	string,
	{ rev: number; hash: string }
>;
const fresh: typeof kept = {};
for (const family of await loadFamilies()) {
	for (const level of levels) {
		const key = `${family.code}${level}`;
		const known = kept[key];
		const hash = await fingerprint(family, level);
		if (known?.rev === family.rev && known.hash !== hash) {
			console.log(
				`${key} draws something else: raise its revision in families/${family.topic}/topic.ts.`
			);
		}
		fresh[key] = known?.rev === family.rev ? known : { rev: family.rev, hash };
	}
}
writeFileSync(file, `${JSON.stringify(fresh, null, '\t')}\n`);
