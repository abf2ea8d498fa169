import {
	type CourseChange,
	type CourseSettings,
	minutesRange
} from '$lib/engine/schedule/course-settings.ts';
import { dayOf, isoOf } from '$lib/engine/schedule/day.ts';
import { type DayRange, daysIn, rangesOf } from './day-ranges.ts';

/** Milliseconds without a keystroke after which what was typed is taken. */
export const settleTime = 600;
/** An exam further away than this, in days, is taken for a mistyped year. */
const farthest = 2 * 366;
/** Single days off that are kept at most. */
const mostDates = 400;

interface Options {
	/** The settings as they are now. */
	readonly settings: () => CourseSettings;
	readonly today: () => number;
	readonly onchange: (change: CourseChange) => void;
}

type Field = 'exam' | 'minutes' | 'weekdays' | 'dates' | 'topics';

/**
 * The form for exam, minutes and days off. A field shows what was typed until it can be taken; then
 * it changes the settings, one at a time. What cannot be taken changes nothing and says why.
 */
export class CourseForm {
	readonly #options: Options;
	readonly #savedExam = $derived.by(() => this.#options.settings().exam ?? '');
	readonly #savedMinutes = $derived.by(() => String(this.#options.settings().minutes));
	exam = $derived(this.#savedExam);
	minutes = $derived(this.#savedMinutes);
	/** The days off about to be added. */
	from = $state('');
	to = $state('');
	problems = $state.raw<Partial<Record<Field, string>>>({});
	#timers: Partial<Record<Field, ReturnType<typeof setTimeout>>> = {};

	constructor(options: Options) {
		this.#options = options;
	}

	/** Single days off from today on, those in a row together. */
	readonly ranges: readonly DayRange[] = $derived.by(() => {
		const { settings, today } = this.#options;
		const days = settings().datesOff.map(dayOf);
		return rangesOf(days.filter((day) => day >= today()));
	});

	typeMinutes(text: string): void {
		this.minutes = text;
		this.#later('minutes', () => this.takeMinutes());
	}

	takeMinutes(): void {
		this.#cancel('minutes');
		const minutes = readMinutes(this.minutes);
		const { least, most } = minutesRange;
		if (minutes === null) {
			this.#say('minutes', `Type a whole number of minutes from ${least} to ${most}.`);
		} else {
			this.#say('minutes');
			if (minutes !== this.#settings.minutes) this.#options.onchange({ minutes });
		}
	}

	/** An empty date says nothing yet: it may be half typed. */
	typeExam(date: string): void {
		if (date === '') return this.#cancel('exam');
		this.exam = date;
		this.#later('exam', () => this.takeExam());
	}

	takeExam(): void {
		this.#cancel('exam');
		if (this.exam === '') return;
		const problem = dayProblem(this.exam, this.#options.today());
		this.#say('exam', problem);
		if (!problem && this.exam !== this.#savedExam) this.#options.onchange({ exam: this.exam });
	}

	removeExam(): void {
		this.#cancel('exam');
		this.#say('exam');
		this.exam = '';
		this.#options.onchange({ exam: null });
	}

	/** Makes a day of the week, 0 = Sunday, a day off or not; returns whether it is one now. */
	setWeekday(weekday: number, off: boolean): boolean {
		const others = this.#settings.weekdaysOff.filter((one) => one !== weekday);
		if (off && others.length === 6) {
			this.#say('weekdays', 'Keep at least one day of the week for practice.');
			return false;
		}
		this.#say('weekdays');
		const weekdaysOff = off ? [...others, weekday].sort((a, b) => a - b) : others;
		this.#options.onchange({ weekdaysOff });
		return off;
	}

	/** Takes a topic in or leaves it out, of so many; returns whether it is in now. */
	setTopic(topic: string, isIn: boolean, all: number): boolean {
		const others = (this.#settings.without ?? []).filter((one) => one !== topic);
		if (!isIn && others.length + 1 >= all) {
			this.#say('topics', 'Keep at least one topic to practise.');
			return true;
		}
		this.#say('topics');
		this.#options.onchange({ without: isIn ? others : [...others, topic].sort() });
		return isIn;
	}

	addDates(): void {
		const problem = this.#rangeProblem();
		this.#say('dates', problem);
		if (problem) return;
		const added = daysIn({ from: dayOf(this.from), to: dayOf(this.to || this.from) });
		const kept = this.#kept();
		const datesOff = [...kept, ...added.map(isoOf).filter((date) => !kept.includes(date))].sort();
		if (datesOff.length > mostDates) {
			this.#say('dates', `At most ${mostDates} single days off fit: add fewer.`);
			return;
		}
		this.from = this.to = '';
		this.#options.onchange({ datesOff });
	}

	removeDates({ from, to }: DayRange): void {
		this.#say('dates');
		const isOther = (day: number) => day < from || day > to;
		this.#options.onchange({ datesOff: this.#kept().filter((date) => isOther(dayOf(date))) });
	}

	/** Takes nothing more that is still being typed. */
	stop(): void {
		for (const field of ['exam', 'minutes'] as const) this.#cancel(field);
	}

	get #settings(): CourseSettings {
		return this.#options.settings();
	}

	/** Days off before the course began count no more. */
	#kept(): string[] {
		const { start, datesOff } = this.#settings;
		return datesOff.filter((date) => date >= start);
	}

	#rangeProblem(): string | undefined {
		if (this.from === '') return 'Choose the day off first.';
		const today = this.#options.today();
		const problem = dayProblem(this.from, today) ?? (this.to && dayProblem(this.to, today));
		if (problem) return problem;
		const wrongWay = this.to !== '' && dayOf(this.to) < dayOf(this.from);
		return wrongWay ? 'The last day comes before the first: change one of them.' : undefined;
	}

	#say(field: Field, problem?: string): void {
		this.problems = { ...this.problems, [field]: problem };
	}

	#later(field: Field, take: () => void): void {
		this.#cancel(field);
		this.#timers[field] = setTimeout(take, settleTime);
	}

	#cancel(field: Field): void {
		clearTimeout(this.#timers[field]);
	}
}

/** Whole minutes in the range that can be set, or null. */
function readMinutes(text: string): number | null {
	const [, digits] = /^\s*(\d{1,3})\s*(?:min|minutes)?\s*$/i.exec(text) ?? [];
	const minutes = Number(digits ?? NaN);
	return minutes >= minutesRange.least && minutes <= minutesRange.most ? minutes : null;
}

/** Why a date, as YYYY-MM-DD, can be no day to come; undefined when it can. */
function dayProblem(date: string, today: number): string | undefined {
	const day = /^\d{4}-\d{2}-\d{2}$/.test(date) ? dayOf(date) : Infinity;
	if (day < today) return 'That day has passed: choose today or a later day.';
	if (day > today + farthest) return 'That is more than two years away: check the year.';
	return undefined;
}
