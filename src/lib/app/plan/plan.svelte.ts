import { late } from '$lib/ui/late.ts';
import { firstSettings } from '$lib/engine/schedule/course-settings.ts';
import { isoOf } from '$lib/engine/schedule/day.ts';
import type { Forecast } from '$lib/engine/schedule/forecast.ts';
import type { Run as EngineRun } from '$lib/engine/schedule/run.ts';
import type { SkillId } from '$lib/engine/schedule/skill.ts';
import { shortDate } from '$lib/ui/dates.ts';
import { breath } from '../breath.ts';
import { clock } from '../device/clock.svelte.ts';
import { device } from '../device/device.svelte.ts';
import type { Known, Miss, Planner } from './planner.ts';
import { type Below, type Planned, type Run, type RunTask, nameOf } from '../practice/run.ts';

/** The plan of the learner at work, made anew whenever what it rests on changes. */
class Plan {
	/** Loaded on demand, with every family. */
	planner = $state.raw<Planner | null>(null);
	#loading: Promise<Planner> | null = null;

	/** Today, as the scheduler counts days. */
	get day(): number {
		return clock.day;
	}

	readonly settings = $derived(device.course ?? firstSettings(isoOf(this.day)));

	readonly today: EngineRun | null = $derived.by(() => {
		const known = this.#known();
		return this.planner && known ? this.planner.today(known) : null;
	});

	/** Minutes today's tasks are expected to take. */
	readonly minutes: number = $derived.by(() => {
		const seconds = (this.today?.items ?? []).map((item) => item.seconds + item.reading);
		return Math.round(seconds.reduce((sum, one) => sum + one, 0) / 60);
	});

	readonly forecast: Forecast | null = $derived.by(() => {
		const known = this.#known();
		return this.planner && known ? this.planner.forecast(known) : null;
	});

	/** What the plan leads to when nothing more is done today. */
	readonly rest: Forecast | null = $derived.by(() => {
		const known = this.#known();
		return this.planner && known ? this.planner.forecastOfRest(known) : null;
	});

	/** Loads what planning needs; the log of the learner must have been read before. */
	async load(): Promise<Planner> {
		clock.look();
		this.#loading ??= late(() => import('./planner.ts')).then(({ loadPlanner }) => loadPlanner());
		// What could not be loaded is asked for again next time.
		this.#loading.catch(() => (this.#loading = null));
		const [planner] = await Promise.all([this.#loading, device.open()]);
		this.planner = planner;
		return planner;
	}

	/** A run for today; `before` is the run it takes the place of. */
	async newRun(id: string, below: Below, before: Run | null): Promise<Run | null> {
		const planner = await this.load();
		const known = this.#known();
		if (!known) return null;
		const planned = planner.today(known);
		return planned.items.length > 0 ? planner.run(planned, known, id, below, before) : null;
	}

	/** Tasks by free choice, a worked one before each that is new; as they are where no log can be read. */
	async withWorked(tasks: readonly RunTask[], below: Below): Promise<readonly RunTask[]> {
		const planner = await this.load();
		// What has come is painted before tasks are drawn.
		await breath();
		const known = this.#known();
		return known ? planner.withWorked(tasks, known, below) : tasks;
	}

	/** The run with the return of a missed task in it. */
	missed(planner: Planner, run: Run, miss: Miss, below: Below): Run {
		const known = this.#known();
		return known ? planner.missed(run, known, miss, below) : run;
	}

	/** Number of a fresh task of a skill. */
	async taskFor(skill: SkillId, below: Below): Promise<string | null> {
		const planner = await this.load();
		const known = this.#known();
		return known ? planner.taskFor(skill, known, below) : null;
	}

	/** Whether so many minutes a day would reach every skill. */
	reaches(minutes: number): boolean {
		const known = this.#known();
		if (!this.planner || !known) return false;
		const settings = { ...known.settings, minutes };
		return this.planner.forecast({ ...known, settings }).unreached.length === 0;
	}

	/** Why the plan chose a task, once planning has been loaded. */
	why(planned: Planned): string {
		return this.planner?.why(planned, device.learning, this.day) ?? '';
	}

	/** What a run is called: that of an earlier day is not today's. */
	runName(run: Run): string {
		const isOld = run.topic === 'plan' && run.day !== this.day;
		return isOld ? `Tasks of ${shortDate(run.day)}` : nameOf(run);
	}

	#known(): Known | null {
		const { learning } = device;
		return learning ? { learning, settings: this.settings, day: this.day } : null;
	}
}

export const plan = new Plan();
