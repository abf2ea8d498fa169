import { isOff } from '$lib/engine/schedule/calendar.ts';
import {
	changeCourse,
	type CourseChange,
	courseOf,
	type CourseSettings
} from '$lib/engine/schedule/course-settings.ts';
import { dayOf, isoOf } from '$lib/engine/schedule/day.ts';
import type { Forecast } from '$lib/engine/schedule/forecast.ts';
import { icalendar } from '$lib/engine/schedule/icalendar.ts';
import type { SkillId } from '$lib/engine/schedule/skill.ts';
import type { Sitting } from '$lib/engine/schedule/sitting.ts';
import { leadText, leadTitle } from '$lib/ui/plan/lead.ts';
import type { GivenUp, StandRow, WeakStep } from '$lib/ui/plan/rows.ts';
import { breath } from '../breath.ts';
import { below } from '../device/chance.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { enoughMinutes } from './enough-minutes.ts';
import { plan } from './plan.svelte.ts';
import { startPlan } from './start-plan.ts';
import { planEntries } from './plan-calendar.ts';
import { givenUpBy, standRows, weakSteps } from './plan-view.ts';
import { lastRehearsal, recentAttempts } from '../home/recent.ts';
import { practice } from '../practice/practice.svelte.ts';
import { leftToday } from '../practice/run.ts';

/** What the plan page shows. */
export interface PlanView {
	readonly today: number;
	readonly settings: CourseSettings;
	readonly forecast: Forecast;
	/** The exam when it is today or ahead. */
	readonly exam: number | null;
	readonly title: string;
	readonly text: string;
	readonly rows: readonly StandRow[];
	readonly weak: readonly WeakStep[];
	/** All steps, and those that do not get a turn before the exam. */
	readonly steps: number;
	readonly givenUp: readonly GivenUp[];
	/** Tasks of today's run still to be answered, when it is under way. */
	readonly left: number;
	readonly offToday: boolean;
}

/** The plan of the learner at work as a page, and what can be done on it. */
export class PlanPage {
	/**
	 * Minutes a day that would give every step a turn; null when none would, undefined until that
	 * has been worked out.
	 */
	enough = $state<number | null>();

	readonly view: PlanView | null = $derived.by(() => {
		const { planner, forecast, settings, day: today } = plan;
		const { learning } = device;
		if (!planner || !forecast || !learning) return null;
		const set = settings.exam === null ? null : dayOf(settings.exam);
		const exam = set !== null && set >= today ? set : null;
		const { minutes } = settings;
		const facts = { today, exam: set, minutes, forecast, answered: learning.tasks };
		const left = leftToday(practice.run, today);
		return {
			today,
			settings,
			forecast,
			exam,
			title: leadTitle(facts),
			text: leadText(facts),
			rows: standRows(planner, forecast, learning),
			weak: weakSteps(planner, forecast, learning, left.length > 0 ? practice.run : null),
			steps: forecast.all.steps,
			givenUp: exam === null ? [] : givenUpBy(planner, forecast.unreached),
			left: left.length,
			offToday: isOff(courseOf(settings).off, today)
		};
	});

	/** What the newest rehearsal came to; null where there was none of late. */
	rehearsal = $state.raw<Sitting | null>(null);

	async load(): Promise<void> {
		if (!practice.run) await practice.load();
		await plan.load();
		this.rehearsal = await lastRehearsal(await recentAttempts(plan.day));
	}

	change(change: CourseChange): Promise<boolean> {
		return logbook.setCourse(changeCourse(plan.settings, change, isoOf(plan.day)));
	}

	/** Opens the run of today, or makes it; resolves to whether there is one. */
	async start(): Promise<boolean> {
		return (this.view?.left ?? 0) > 0 || startPlan(practice);
	}

	/** Number of a fresh task of a step. */
	taskFor(skill: SkillId): Promise<string | null> {
		return plan.taskFor(skill, below);
	}

	/** The plan as a calendar file; null when there is nothing to put into one. */
	calendar(start: number | undefined, now: number): string | null {
		const { view } = this;
		const { planner } = plan;
		const learner = device.learnerId;
		if (!view || !planner || learner === null) return null;
		const { forecast, exam } = view;
		const entries = planEntries({ learner, forecast, exam, label: planner.label, start });
		return entries.length > 0 ? icalendar(entries, now) : null;
	}

	/** Looks for the minutes that are enough where the time is too short; returns how to stop it. */
	seek(): () => void {
		const { minutes } = plan.settings;
		this.enough = undefined;
		let wanted = (this.view?.givenUp.length ?? 0) > 0;
		const turn = () => breath().then(() => wanted);
		if (wanted) {
			void enoughMinutes(minutes, (tried) => plan.reaches(tried), turn).then((found) => {
				if (wanted) this.enough = found;
			});
		}
		return () => {
			wanted = false;
		};
	}
}
