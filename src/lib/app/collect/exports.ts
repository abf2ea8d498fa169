import { dueCalendar } from '$lib/exchange/due-date.ts';
import { setPath, writeSet } from '$lib/exchange/set-link.ts';
import { download } from '$lib/ui/download.ts';
import { collecting } from './collecting.svelte.ts';

/*
 * Files that the instructor takes away. Each says in one sentence what it could not hold; empty
 * where it holds all.
 */

export const exports = {
	async gradebook(): Promise<string> {
		const { desk } = collecting;
		const classWork = await collecting.classWork();
		if (classWork) save('gradebook', 'csv', await desk.run('gradebook', [classWork]));
		return '';
	},
	async slips(): Promise<string> {
		const { desk } = collecting;
		const classWork = await collecting.classWork();
		if (classWork) save('slips', 'csv', await desk.run('slips', [classWork]));
		return '';
	},
	async xapi(): Promise<string> {
		const { desk } = collecting;
		const classWork = await collecting.classWork();
		const now = new Date().toISOString();
		if (classWork) save('xapi', 'json', await desk.run('xapi', [classWork, now]));
		return '';
	},
	async qti(): Promise<string> {
		const { desk } = collecting;
		const set = await collecting.keptSet();
		if (!set) return '';
		const { bytes, left } = await desk.run('qti', [set]);
		save('qti', 'zip', bytes);
		return left.join(' ');
	},
	/** @param top address of the pages, for the link in it */
	async calendar(top: string): Promise<string> {
		const { set } = collecting;
		if (!set) return '';
		const text = dueCalendar(set, Date.now(), `${top}${setPath}#${await writeSet(set)}`);
		if (text === null) return 'The set has no due date for a calendar.';
		save('due', 'ics', text);
		return '';
	}
} as const;

const types = {
	csv: 'text/csv',
	json: 'application/json',
	zip: 'application/zip',
	ics: 'text/calendar'
} as const;

function save(name: string, end: keyof typeof types, content: BlobPart): void {
	download(`${name}-${collecting.hash ?? ''}.${end}`, types[end], content);
}
