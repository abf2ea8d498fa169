import { dayOf } from '$lib/engine/schedule/day.ts';
import { stages } from '$lib/engine/schedule/panel-events.ts';
import {
	isTimePlanEvent,
	mostMinutes,
	type TimeSettings
} from '$lib/engine/schedule/time-plan-events.ts';
import { benchTime, layOut, type Moment } from '$lib/engine/time-plan/lay-out.ts';
import {
	emptySettings,
	type Pace,
	paceOf,
	type SavedTimePlan,
	timePlanOf
} from '$lib/engine/time-plan/saved.ts';
import { stepsOf, type TimeStep } from '$lib/engine/time-plan/steps.ts';
import { placeKey } from '$lib/ui/panel/places.ts';
import { localDay } from '$lib/storage/local-day.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { panelBench } from './panel-bench.svelte.ts';

/** A time of this device as minutes on the wall clock. */
function wallMinutes(milliseconds: number): Moment {
	const date = new Date(milliseconds);
	return dayOf(localDay(date)) * 1440 + date.getHours() * 60 + date.getMinutes();
}

/** The time plan of the panel on the bench. */
class TimePlan {
	/** Minutes on the wall clock. */
	now = $state.raw<Moment>(wallMinutes(Date.now()));
	ready = $state(false);
	#saved = $state.raw<SavedTimePlan>({ settings: emptySettings, steps: new Map() });
	/** Changes that are not in the log yet: what is read meanwhile would be older than the page. */
	#writing = 0;
	#pace = $state.raw<Pace>({ factor: 1, steps: 0 });

	readonly settings = $derived(this.#saved.settings);
	readonly pace = $derived(this.#pace);
	readonly steps = $derived.by(() =>
		stepsOf(panelBench.plan, this.#saved, {
			pace: this.#pace,
			shares: this.#shares(),
			spent: this.#spent()
		})
	);
	readonly layout = $derived(layOut(this.steps, this.settings, this.now));
	/** The first step that is still to do. */
	readonly next = $derived(this.steps.find(({ state, isOut }) => state !== 'done' && !isOut));

	async load(): Promise<void> {
		await panelBench.load();
		await this.refresh();
		this.ready = true;
	}

	/** Reads the log and the clock again: another tab may have written, and time goes on. */
	async refresh(): Promise<void> {
		this.tickClock();
		const desk = await device.open();
		const { learner } = device;
		const events =
			desk && learner ? await desk.eventsOf(learner.id, (type) => isTimePlanEvent({ type })) : [];
		if (this.#writing > 0) return;
		this.#saved = timePlanOf(events, panelBench.id);
		this.#pace = paceOf(events);
	}

	tickClock(): void {
		this.now = wallMinutes(Date.now());
	}

	/** Changes what is set; resolves when it is in the log. */
	async set(change: Partial<TimeSettings>): Promise<void> {
		const settings = { ...this.settings, ...change };
		this.#saved = { ...this.#saved, settings };
		await this.#write(() => logbook.note({ type: 'time-plan', panel: panelBench.id, ...settings }));
	}

	begin(step: TimeStep): Promise<void> {
		return this.#mark(step, 'begun');
	}

	open(step: TimeStep): Promise<void> {
		return this.#mark(step, 'open');
	}

	/** Ticks a step; it took what it was last said to take, or what went by since it was begun. */
	finish(step: TimeStep): Promise<void> {
		const went = this.#spent().get(step.id) ?? 0;
		return this.#mark(step, 'done', went > 0 ? went : step.minutes);
	}

	/** Corrects the minutes of a step, done or not. */
	async correct(step: TimeStep, minutes: number): Promise<void> {
		if (step.state === 'done') return this.#mark(step, 'done', minutes);
		await this.set({ minutes: { ...this.settings.minutes, [step.id]: minutes } });
	}

	async #mark(step: TimeStep, state: TimeStep['state'], took?: number): Promise<void> {
		const minutes = took === undefined ? null : Math.min(Math.max(1, took), mostMinutes);
		const marked = [step.id, { state, minutes, at: Date.now() }] as const;
		this.#saved = { ...this.#saved, steps: new Map([...this.#saved.steps, marked]) };
		await this.#write(() =>
			logbook.note({
				type: 'time-step',
				panel: panelBench.id,
				step: step.id,
				state,
				...(minutes !== null && { minutes, guess: step.guess })
			})
		);
		await this.refresh();
	}

	async #write(note: () => Promise<boolean>): Promise<void> {
		this.#writing += 1;
		try {
			await panelBench.settle();
			await note();
		} finally {
			this.#writing -= 1;
		}
	}

	/** Holes ticked on the shop list, as shares of all. */
	#shares(): Record<string, number> {
		const holes = panelBench.plan?.holes ?? [];
		if (holes.length === 0) return {};
		const done = (stage: (typeof stages)[number]) =>
			holes.filter((hole) => panelBench.isDone(stage, placeKey(hole))).length;
		return Object.fromEntries(stages.map((stage) => [stage, done(stage) / holes.length]));
	}

	/** Minutes since each begun step was begun: those at the bench, or all where none was planned. */
	#spent(): Map<string, number> {
		const begun = [...this.#saved.steps].filter(([, { state }]) => state === 'begun');
		return new Map(
			begun.map(([id, { at }]) => {
				const from = wallMinutes(at);
				const planned = benchTime(this.settings.times, from, this.now);
				const atBench = planned.reduce((sum, one) => sum + one.to - one.from, 0);
				return [id, atBench > 0 ? atBench : Math.min(this.now - from, mostMinutes)];
			})
		);
	}
}

export const timePlan = new TimePlan();
