import { LEVELS, SKILLS, TOPICS } from '../ground.ts';
import { type Rival, dealtBy } from '../rival.ts';
import type { Timetable } from '../timetable.ts';

/** The i-th of n problems goes to a skill settled in advance. */
type Deal = (i: number, n: number) => number;

function fixed(
	id: string,
	label: string,
	deal: Deal,
	daysOf = (timetable: Timetable): readonly number[] => timetable.days
): Rival {
	return {
		id,
		label,
		days: daysOf,
		tutor(problems, timetable) {
			const days = daysOf(timetable);
			let given = 0;
			let until = 0;
			return {
				open(day) {
					until = dealtBy(days.indexOf(day), days.length, problems);
				},
				next: () => (given < until ? deal(given++, problems) : undefined),
				saw() {}
			};
		}
	};
}

const inTurn: Deal = (i) => i % SKILLS;

const byTopic: Deal = (i, n) => {
	const place = Math.floor((i * SKILLS) / n);
	return (place % LEVELS) * TOPICS + Math.floor(place / LEVELS);
};

export const roundRobin = fixed('round-robin', 'round-robin', inTurn);
export const blocking = fixed('blocking', 'blocked by topic', byTopic);
/** On the last three days of the calendar, days off or not. */
export const cramming = fixed('cramming', 'all in the last three days', inTurn, ({ exam }) => [
	exam - 3,
	exam - 2,
	exam - 1
]);
