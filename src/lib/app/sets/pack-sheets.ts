import type { KeptSheet } from '$lib/engine/sets/kept-draws.ts';
import type { SetTask } from '$lib/engine/sets/open-set.ts';
import { packSheet } from '$lib/exchange/kept-sheets.ts';

/**
 * The sheets of codes, packed for the log; with null everybody's.
 *
 * @param tasksOf the tasks on a sheet; a sentence where its code has none
 */
export async function packSheets<Code extends string | null>(
	codes: readonly Code[],
	tasksOf: (code: Code) => readonly SetTask[] | string
): Promise<KeptSheet[]> {
	const sheets: KeptSheet[] = [];
	for (const code of codes) {
		const tasks = tasksOf(code);
		if (typeof tasks !== 'string') sheets.push(...(await packSheet(code, tasks)));
	}
	return sheets;
}
