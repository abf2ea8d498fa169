import type { ClassReport } from '$lib/engine/sets/class-report.ts';
import type { StudentPage } from '$lib/engine/sets/student-page.ts';
import { collecting } from './collecting.svelte.ts';

/** What the open set came to, for the class and for each student; worked out in the worker. */
class SetReport {
	class = $state.raw<ClassReport | null>(null);
	students = $state.raw<readonly StudentPage[]>([]);

	/** Works both out for the marks as they stand. */
	async read(): Promise<void> {
		const { set, handIns, desk } = collecting;
		if (!set) return;
		this.class = await desk.run('report', [set, handIns]);
		this.students = await desk.run('students', [set, handIns]);
	}
}

export const setReport = new SetReport();
