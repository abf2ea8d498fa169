import { expect, test } from 'vitest';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import type { Forecast } from '../../../src/lib/engine/schedule/forecast.ts';
import type { Sitting } from '../../../src/lib/engine/schedule/sitting.ts';
import { aboutMinutes } from '../../../src/lib/ui/plan/amounts.ts';
import {
	type LeadFacts,
	leadText,
	leadTitle,
	rehearsalText
} from '../../../src/lib/ui/plan/lead.ts';

const today = dayOf('2026-11-25');
const studyDay = { day: today, phase: 'build', tasks: 8, minutes: 22 } as const;

function facts(exam: string | null, change: Partial<LeadFacts> = {}): LeadFacts {
	const forecast: Forecast = {
		until: today,
		days: [studyDay],
		all: { today: 0.5, then: 0.863, metThen: 85, steps: 85 },
		topics: [],
		kindsOn: new Map(),
		comesUp: new Map(),
		weakest: [],
		missed: [],
		unreached: []
	};
	const day = exam === null ? null : dayOf(exam);
	return { today, exam: day, minutes: 25, forecast, answered: 100, ...change };
}

test.each([
	{ exam: '2026-12-11', title: '16 days to the exam, 25 minutes a day' },
	{ exam: '2026-11-26', title: '1 day to the exam, 25 minutes a day' },
	{ exam: '2026-11-25', title: 'The exam is today' },
	{ exam: '2026-11-20', title: '25 minutes a day' },
	{ exam: null, title: '25 minutes a day' }
])('$title: the exam is on $exam', ({ exam, title }) => expect(leadTitle(facts(exam))).toBe(title));

test.each([
	{
		exam: '2026-12-11',
		begins: 'At this pace, about 86\u00a0% of the steps right on 11 December. An'
	},
	{ exam: '2026-11-25', begins: 'Expect about 86\u00a0% of the steps right today. An' },
	{ exam: '2026-11-20', begins: 'Your exam was on 20 November. The plan now brings things back' },
	{ exam: null, begins: 'Set the day of your exam' }
])('with the exam on $exam: “$begins”', ({ exam, begins }) => {
	expect(leadText(facts(exam)).startsWith(begins)).toBe(true);
});

test('a forecast from few answers is called rough', () => {
	const text = (answered: number) => leadText(facts('2026-12-11', { answered }));
	expect(text(20)).toContain('An estimate from your answers, not a promise.');
	expect(text(19)).toContain('A rough estimate: the plan does not know you yet.');
});

test('a time full of days off is not called a pace', () => {
	const { forecast } = facts(null);
	const text = leadText(facts('2026-12-11', { forecast: { ...forecast, days: [] } }));
	expect(text).toMatch(
		/^No day for practice is left before 11 December: expect about 86\u00a0% of/
	);
});

test('amounts agree with their numbers', () => {
	expect([0.2, 1.4, 21.6].map(aboutMinutes)).toEqual([
		'about 1 minute',
		'about 1 minute',
		'about 22 minutes'
	]);
});

test('a rehearsal stands beside the estimate, and why its share is lower', () => {
	const sitting: Sitting = {
		...({ id: 'one', day: today - 1, source: 'rehearsal', families: [] } as const),
		...{ right: 1, helped: 0, wrong: 2, seconds: 60 },
		standings: ['right', 'wrong', 'wrong']
	};
	expect(rehearsalText(sitting, today)).toMatch(
		/^In your rehearsal yesterday 1 of 3 questions came out right[.] /
	);
});
