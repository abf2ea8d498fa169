import type { CalendarEntry } from '$lib/engine/schedule/icalendar.ts';
import type { TimeSettings } from '$lib/engine/schedule/time-plan-events.ts';
import { partsOf, type TimeLayout } from '$lib/engine/time-plan/lay-out.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';

interface Options {
	/** Id of the panel: with the step it makes the ids of the entries, which stay the same. */
	readonly panel: string;
	readonly name: string;
	readonly layout: TimeLayout;
	readonly settings: TimeSettings;
	readonly numberOf: (id: string) => number;
}

/** Longest the entry of a hand-in is shown, in minutes. */
const dueMinutes = 15;

/** What is left of a time plan as calendar entries: every stretch of a step, and the hand-in. */
export function timeEntries({ panel, name, layout, settings, numberOf }: Options): CalendarEntry[] {
	const steps = layout.placed.flatMap(({ step, pieces }) =>
		pieces.map(({ from, to }, i): CalendarEntry => {
			const { day, minute } = partsOf(from);
			const waits = settings.questions.filter(
				(one) => one.step === step.id && one.answer.trim() === ''
			);
			return {
				uid: `${step.id}-${i + 1}-${panel}`,
				day,
				time: { start: minute, minutes: to - from },
				summary: `${numberOf(step.id)}. ${step.name}${i > 0 ? ', go on' : ''} (${name})`,
				...(waits.length > 0 && {
					description: `Ask first: ${waits.map(({ text }) => text).join(' ')}`
				})
			};
		})
	);
	const { due } = settings;
	if (!due) return steps;
	const handIn: CalendarEntry = {
		uid: `due-${panel}`,
		day: dayOf(due.day),
		time: { start: due.time, minutes: dueMinutes },
		summary: `Hand in: ${name}`
	};
	return [...steps, handIn];
}
