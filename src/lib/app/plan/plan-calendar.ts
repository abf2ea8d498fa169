import { isoOf } from '$lib/engine/schedule/day.ts';
import type { Forecast, ForecastDay } from '$lib/engine/schedule/forecast.ts';
import type { CalendarEntry } from '$lib/engine/schedule/icalendar.ts';
import type { SkillId } from '$lib/engine/schedule/skill.ts';
import { counted } from '$lib/ui/counted.ts';
import { aboutMinutes } from '$lib/ui/plan/amounts.ts';

interface Options {
	/** Id of the learner: with the day it makes the ids of the entries, which stay the same. */
	readonly learner: string;
	readonly forecast: Forecast;
	/** The exam ahead, or null. */
	readonly exam: number | null;
	readonly label: (skill: SkillId) => string;
	/** When practice starts, in minutes after midnight; left out for whole days. */
	readonly start?: number | undefined;
}

/** The plan as calendar entries: study days, days on which something missed comes back, the exam. */
export function planEntries({ learner, forecast, exam, label, start }: Options): CalendarEntry[] {
	const uid = (kind: string, day: number) => `${kind}-${isoOf(day)}-${learner}`;
	const study = forecast.days
		.filter(({ tasks }) => tasks > 0)
		.map((day) => ({ uid: uid('practice', day.day), ...studyDay(day, start) }));
	const due = dueDays(forecast).map(({ day, skills }) => ({
		uid: uid('due', day),
		day,
		summary: `Due again: ${[...new Set(skills.map(label))].join(', ')}`
	}));
	const last = exam === null ? [] : [{ uid: uid('exam', exam), day: exam, summary: 'Exam' }];
	return [...study, ...due, ...last];
}

function studyDay(
	{ day, phase, tasks, minutes }: ForecastDay,
	start: number | undefined
): Omit<CalendarEntry, 'uid'> {
	const summary = `Sheet metal practice: ${counted(tasks, 'task')}, ${aboutMinutes(minutes)}`;
	return {
		day,
		summary,
		...(phase === 'sweep'
			? { description: 'A last look over what you know before the exam.' }
			: {}),
		...(start === undefined ? {} : { time: { start, minutes: Math.max(1, Math.round(minutes)) } })
	};
}

/** The next day of each missed step, those of one day together. */
function dueDays({ missed }: Forecast): { day: number; skills: SkillId[] }[] {
	const byDay = new Map<number, SkillId[]>();
	for (const { skill, nextDay } of missed) {
		if (nextDay !== null) byDay.set(nextDay, [...(byDay.get(nextDay) ?? []), skill]);
	}
	return [...byDay].sort(([a], [b]) => a - b).map(([day, skills]) => ({ day, skills }));
}
