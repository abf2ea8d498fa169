import type { Attempt } from '$lib/engine/schedule/event.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';
import type { Sitting } from '$lib/engine/schedule/sitting.ts';
import { below } from '../device/chance.ts';
import { lastBefore, recentAttempts } from '../home/recent.ts';
import { plan } from '../plan/plan.svelte.ts';
import { practice } from './practice.svelte.ts';
import { daysWorked, type RunEnd, runEnd } from './run-end.ts';

/** The end of the run on this device. */
export class RunEndPage {
	#attempts = $state.raw<readonly Attempt[] | null>(null);
	#last = $state.raw<Sitting | null>(null);

	readonly view: RunEnd | null = $derived.by(() => {
		const { planner, day } = plan;
		const { run } = practice;
		if (!planner || !run || !this.#attempts) return null;
		const attempts = this.#attempts;
		const worked = daysWorked(run, attempts, day).last;
		const forecast = worked < day ? plan.forecast : plan.rest;
		if (!forecast) return null;
		return runEnd({
			run,
			planner,
			forecast,
			day,
			worked,
			exam: this.exam,
			attempts,
			last: this.#last
		});
	});

	/** The exam when it is ahead. */
	get exam(): number | null {
		const set = plan.settings.exam === null ? null : dayOf(plan.settings.exam);
		return set !== null && set > plan.day ? set : null;
	}

	get day(): number {
		return plan.day;
	}

	async load(): Promise<void> {
		if (!practice.run) await practice.load();
		await plan.load();
		const { run } = practice;
		const attempts = await recentAttempts(plan.day, run?.id);
		if (run) this.#last = await lastBefore(attempts, daysWorked(run, attempts, plan.day).first);
		this.#attempts = attempts;
	}

	/** Number of a fresh task of a step. */
	taskFor(skill: string): Promise<string | null> {
		return plan.taskFor(skill, below);
	}
}
