import { SetError } from '$lib/engine/sets/set-error.ts';
import type { Printed } from '$lib/exchange/print/sheets.ts';
import { readRoster, type Student } from '$lib/exchange/roster.ts';
import { collecting } from './collecting.svelte.ts';
import { keepDrawn } from './keep-drawn.ts';
import { CalledOff } from './work-desk.ts';

/** What is printed: sheets for students, or the key with working and marks. */
export type PrintedWhat = 'sheets' | 'key';

/** The sheets of the open set, made in the worker. */
class Printing {
	what = $state<PrintedWhat>('sheets');
	/** One sheet to be copied, or one for every code of a list. */
	each = $state(false);
	roster = $state('');
	printed = $state.raw<Printed | null>(null);
	busy = $state.raw<{ done: number; of: number } | null>(null);
	problem = $state<string | null>(null);

	/** Makes the sheets as they are asked for now. */
	async make(): Promise<void> {
		const { desk } = collecting;
		this.problem = null;
		const set = await collecting.keptSet();
		if (!set) return;
		try {
			const students = this.#students();
			this.busy = { done: 0, of: Math.max(1, students.length) };
			const progress = (done: number, of: number) => (this.busy = { done, of });
			this.printed = await desk.run('print', [set, students, this.what], progress);
			// What stands on paper is to be marked, whatever the families draw by then.
			void keepDrawn(
				collecting,
				students.map(({ code }) => code)
			);
		} catch (error) {
			if (error instanceof SetError) this.problem = error.message;
			else if (!(error instanceof CalledOff)) throw error;
		} finally {
			this.busy = null;
		}
	}

	#students(): readonly Student[] {
		if (!this.each) return [];
		const reading = readRoster(this.roster);
		if (!reading.ok) throw new SetError(reading.sentence);
		return reading.students;
	}
}

export const printing = new Printing();
