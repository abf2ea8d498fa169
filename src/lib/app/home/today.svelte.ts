import { courseOf } from '$lib/engine/schedule/course-settings.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';
import { isOff } from '$lib/engine/schedule/calendar.ts';
import type { Sitting } from '$lib/engine/schedule/sitting.ts';
import { type Streak, streaksIn } from '$lib/engine/schedule/streaks.ts';
import { shortDate } from '$lib/ui/dates.ts';
import { device } from '../device/device.svelte.ts';
import { plan } from '../plan/plan.svelte.ts';
import { startPlan } from '../plan/start-plan.ts';
import { practice } from '../practice/practice.svelte.ts';
import { doneOf, lastBefore, recentAttempts } from './recent.ts';
import { type TodayView, todayView } from './today-view.ts';

/** The first page of a learner with a history. Loads every family, so it is itself loaded late. */
export class Today {
	/** The sitting before today's, and what has been mended of late. */
	last = $state.raw<Sitting | null>(null);
	/** What was done of today's run so far. */
	done = $state.raw<Sitting | null>(null);
	streaks = $state.raw<readonly Streak[]>([]);
	/** The day they were read on. */
	#readOn = 0;

	readonly view: TodayView | null = $derived.by(() => {
		const { planner, today, forecast, settings, day } = plan;
		const { learning } = device;
		if (!planner || !today || !forecast || !learning) return null;
		const { run } = practice;
		return todayView({
			...{ planner, learning, forecast, day },
			exam: settings.exam === null ? null : dayOf(settings.exam),
			offToday: isOff(courseOf(settings).off, day),
			planned: today.items.map((item) => ({ ...item, kind: item.kind.id })),
			run: run?.topic === 'plan' && run.day === day ? run : null
		});
	});

	async load(): Promise<void> {
		if (!practice.run) await practice.load();
		await plan.load();
		const day = (this.#readOn = plan.day);
		const attempts = await recentAttempts(day);
		const last = await lastBefore(attempts, day);
		if (day !== this.#readOn) return;
		this.streaks = streaksIn(attempts);
		this.last = last;
		this.done = await doneOf(attempts, day, practice.run?.id);
	}

	/** Reads again what was read on another day. */
	async renew(): Promise<void> {
		if (this.day !== this.#readOn) await this.load();
	}

	/** Starts the plan's run for today; resolves to whether there is anything to do. */
	start(): Promise<boolean> {
		return startPlan(practice);
	}

	get day(): number {
		return plan.day;
	}

	/** `27 Nov` */
	get date(): string {
		return shortDate(plan.day);
	}

	label(skill: string): string {
		return plan.planner?.label(skill) ?? '';
	}
}
