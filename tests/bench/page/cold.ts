import { withBarePage } from '../../../src/scripts/size.js';
import { type Figure, median, report } from '../app/report.ts';
import { openSite, type Site, slowed } from '../app/site.ts';
import { slowNetwork, slowProcessor } from '../../browser/slow-device.ts';

const rounds = 9;

const paths = [
	'/',
	'/practice/?task=RL1-00C8-8D',
	'/plan/',
	'/lessons/',
	'/sets/',
	'/check/',
	'/panel/'
];

/** What a first visit sees: when the largest part is painted, and how far anything moves. */
export async function cold(site: Site): Promise<void> {
	const paints: Figure[] = [];
	const shifts: Figure[] = [];
	for (const path of paths) {
		const visits = await visitsTo(site, path);
		paints.push({
			what: path,
			value: median(visits.map(({ paint }) => paint)),
			unit: 'ms',
			most: 1000
		});
		const shift = Math.max(...visits.map((visit) => visit.shift));
		shifts.push({ what: path, value: shift, unit: '', most: 0.004 });
	}
	const bare = await withBarePage(async (folder) => {
		const bareSite = await openSite(folder);
		const visits = await visitsTo(bareSite, '/');
		await bareSite.close();
		return median(visits.map(({ paint }) => paint));
	});
	report(
		`Largest contentful paint, cold, ${slowed}, 9/3 Mbps, 100 ms`,
		`Nothing kept from before; medians of ${rounds}.`,
		[...paints, { what: 'a bare SvelteKit page', value: bare, unit: 'ms' }]
	);
	report('Layout shift on the same visits', `The most of ${rounds}, 1280 px wide.`, shifts);
}

interface Visit {
	readonly paint: number;
	readonly shift: number;
}

async function visitsTo(site: Site, path: string): Promise<Visit[]> {
	const visits: Visit[] = [];
	for (let round = 0; round < rounds; round++) {
		const device = await site.blankDevice();
		const page = await device.newPage();
		await slowProcessor(page);
		await slowNetwork(page);
		await page.addInitScript(noteVisit);
		await page.goto(path, { waitUntil: 'networkidle' });
		visits.push(await page.evaluate<Visit>('visit'));
		await device.close();
	}
	return visits;
}

/** Runs in the page: keeps when its largest part was painted, and how far parts were moved. */
function noteVisit(): void {
	const visit = { paint: 0, shift: 0 };
	Object.assign(globalThis, { visit });
	new PerformanceObserver((list) => {
		for (const { startTime } of list.getEntries()) visit.paint = startTime;
	}).observe({ type: 'largest-contentful-paint', buffered: true });
	new PerformanceObserver((list) => {
		for (const entry of list.getEntries()) visit.shift += (entry as Shift).value;
	}).observe({ type: 'layout-shift', buffered: true });

	interface Shift extends PerformanceEntry {
		readonly value: number;
	}
}
