import type { ClassReport } from '$lib/engine/sets/class-report.ts';
import type { StudentPage } from '$lib/engine/sets/student-page.ts';
import { collecting } from './collecting.svelte.ts';

/** What the open set came to, for the class and for each student; worked out in the worker. */
class SetReport {
	#class = $state.raw<{ hash: string; report: ClassReport } | null>(null);
	#students = $state.raw<{ hash: string; pages: readonly StudentPage[] } | null>(null);
	/** Null until it is worked out for the set that is open. */
	readonly class = $derived(this.#class?.hash === collecting.hash ? this.#class.report : null);
	readonly students = $derived(
		this.#students?.hash === collecting.hash ? this.#students.pages : null
	);

	/** Works out the report on the class for the marks as they stand. */
	async readClass(): Promise<void> {
		const { hash, desk } = collecting;
		const classWork = await collecting.classWork();
		if (!classWork || hash === null) return;
		this.#class = { hash, report: await desk.run('report', [classWork]) };
	}

	/** The same for the page of each student. */
	async readStudents(): Promise<void> {
		const { hash, desk } = collecting;
		const classWork = await collecting.classWork();
		if (!classWork || hash === null) return;
		const pages: StudentPage[] = [];
		await desk.run('students', [classWork], (_done, _of, page) => {
			if (page) pages.push(page);
		});
		this.#students = { hash, pages };
	}
}

export const setReport = new SetReport();
