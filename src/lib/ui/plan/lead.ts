import type { Sitting } from '$lib/engine/schedule/sitting.ts';
import type { Forecast } from '$lib/engine/schedule/forecast.ts';
import { percent } from '../percent.ts';
import { longDate } from '../dates.ts';
import { dayWords } from '../reason.ts';

/** What the first lines of the plan page speak of. Days are whole numbers. */
export interface LeadFacts {
	readonly today: number;
	readonly exam: number | null;
	readonly minutes: number;
	readonly forecast: Forecast;
	/** Tasks answered so far. */
	readonly answered: number;
}

/** Fewer answers than this say little about a person. */
const fewAnswers = 20;

export function leadTitle({ today, exam, minutes }: LeadFacts): string {
	if (exam === null || exam < today) return `${minutes} minutes a day`;
	if (exam === today) return 'The exam is today';
	const days = exam - today;
	return `${days} ${days === 1 ? 'day' : 'days'} to the exam, ${minutes} minutes a day`;
}

export function leadText(facts: LeadFacts): string {
	const { today, exam, forecast } = facts;
	if (exam === null) {
		return 'Set the day of your exam and the plan works towards it. Until then it brings things back before they fade.';
	}
	if (exam < today) {
		return `Your exam was on ${longDate(exam, today)}. The plan now brings things back before they fade.`;
	}
	const share = `about ${percent(forecast.all.then)} of the steps right`;
	const { metThen, steps } = forecast.all;
	const unmet =
		metThen < steps
			? `; ${steps - metThen} of ${steps} steps ${steps - metThen === 1 ? 'is' : 'are'} not met by then`
			: '';
	const estimate =
		facts.answered < fewAnswers
			? 'A rough estimate: the plan does not know you yet.'
			: 'An estimate from your answers, not a promise.';
	if (exam === today) return `Expect ${share} today. ${estimate}`;
	const day = longDate(exam, today);
	if (forecast.days.length === 0) {
		return `No day for practice is left before ${day}: expect ${share}. ${estimate}`;
	}
	return `At this pace, ${share} on ${day}${unmet}. ${estimate}`;
}

/** What a rehearsal came to beside an estimate by the step. */
export function rehearsalText({ day, right, standings }: Sitting, today: number): string {
	return `In your rehearsal ${dayWords(day, today)} ${right} of ${standings.length} questions came out right. A question takes several steps, all of them right, so its share is lower than that of the steps. What you missed there is in the plan.`;
}
