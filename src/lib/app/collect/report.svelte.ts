import type { ClassReport } from '$lib/engine/sets/class-report.ts';
import type { StudentPage } from '$lib/engine/sets/student-page.ts';
import { collecting } from './collecting.svelte.ts';

interface ReportRead {
	readonly hash: string;
	readonly class: ClassReport;
	readonly students: readonly StudentPage[];
}

/** What the open set came to, for the class and for each student; worked out in the worker. */
class SetReport {
	#read = $state.raw<ReportRead | null>(null);
	/** Null until it is worked out for the set that is open. */
	readonly class = $derived(this.#own?.class ?? null);
	readonly students = $derived(this.#own?.students ?? []);

	get #own(): ReportRead | null {
		return this.#read?.hash === collecting.hash ? this.#read : null;
	}

	/** Works both out for the marks as they stand. */
	async read(): Promise<void> {
		const { set, hash, handIns, desk } = collecting;
		if (!set || hash === null) return;
		const report = await desk.run('report', [set, handIns]);
		const students = await desk.run('students', [set, handIns]);
		this.#read = { hash, class: report, students };
	}
}

export const setReport = new SetReport();
