import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { untilAnswerable } from '../../../src/scripts/first-page.js';
import { firstLoad, withBarePage } from '../../../src/scripts/size.js';
import { report } from '../app/report.ts';

const most = 70;

/** The JavaScript that Chromium fetches until the first task of each family can be answered. */
export async function weights(): Promise<void> {
	const families = await loadFamilies();
	const numbers = families.map((family) => drawTask(family, 1, 1).number);
	const loads = await untilAnswerable(numbers);
	const bare = await withBarePage((folder) => firstLoad(folder, 'index.html'));
	report('JavaScript until the first task can be answered', 'After gzip -9, file by file.', [
		{ what: 'a bare SvelteKit page', value: bare.bytes / 1000, unit: 'kB' },
		...loads.map(({ number, bytes }, i) => ({
			what: `${families[i]?.id ?? ''}, ${number}`,
			value: bytes / 1000,
			unit: 'kB',
			most
		}))
	]);
}
