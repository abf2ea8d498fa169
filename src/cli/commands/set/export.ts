import { dueCalendar } from '../../../lib/exchange/due-date.ts';
import { qtiPackage, writeQti } from '../../../lib/exchange/qti/package.ts';
import { write } from '../../files.ts';
import type { Options } from '../../options.ts';
import type { Answer } from '../../run.ts';
import { UsageError } from '../../usage-error.ts';
import { setIn } from './link.ts';

export async function exportSet(args: readonly string[], options: Options): Promise<Answer> {
	const { open, link } = await setIn(args);
	const [qti, ics] = [options.value('--qti'), options.value('--ics')];
	if (qti === undefined && ics === undefined) {
		throw new UsageError('Give --qti or --ics as well: the file for the package or the due date.');
	}
	const { items, left, files } = qtiPackage(open);
	if (ics !== undefined) {
		const calendar = dueCalendar(open.set, Date.now(), link);
		if (calendar === null) throw new UsageError('The set has no due date for a calendar.');
		await write(ics, calendar);
	}
	if (qti !== undefined) await write(qti, writeQti({ files }));
	const written = [qti, ics].filter((file) => file !== undefined);
	return {
		data: { hash: open.hash, files: written, ...(qti === undefined ? {} : { items, left }) },
		text: [
			...written,
			...(qti === undefined ? [] : [`${items} of ${open.tasks.length} tasks are items.`, ...left])
		].join('\n')
	};
}
