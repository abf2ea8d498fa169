import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lastBefore } from '../../src/lib/app/home/recent.ts';
import { todayView } from '../../src/lib/app/home/today-view.ts';
import { planEntries } from '../../src/lib/app/plan/plan-calendar.ts';
import { givenUpBy, standRows, weakSteps } from '../../src/lib/app/plan/plan-view.ts';
import { loadPlanner } from '../../src/lib/app/plan/planner.ts';
import { daysWorked, runEnd } from '../../src/lib/app/practice/run-end.ts';
import { doneByDay, readLog } from '../../src/lib/app/progress/progress.ts';
import { isOff } from '../../src/lib/engine/schedule/calendar.ts';
import { courseFold, courseKey } from '../../src/lib/engine/schedule/course-fold.ts';
import { courseOf, firstSettings } from '../../src/lib/engine/schedule/course-settings.ts';
import { dayOf, isoOf } from '../../src/lib/engine/schedule/day.ts';
import type { KnownEvent } from '../../src/lib/engine/schedule/event.ts';
import { learningFold } from '../../src/lib/engine/schedule/learning.ts';
import { sittingsOf } from '../../src/lib/engine/schedule/sitting.ts';
import { streaksIn } from '../../src/lib/engine/schedule/streaks.ts';
import { leadText, leadTitle } from '../../src/lib/ui/plan/lead.ts';
import { attempt, sam } from '../storage/event-arbitrary.ts';
import { belowFrom } from './seeded-chance.ts';

const planner = await loadPlanner();
const skills = planner.syllabus.skills.map(({ id }) => id);

/** Days that a clock has shown: the first, the last, years back and ahead, and now. */
const iso = fc.constantFrom(
	...['0001-01-01', '1970-01-01', '1999-12-31', '2026-11-25', '2026-11-26', '2027-03-01'],
	...['2099-02-28', '9999-12-31']
);
/** Times of events, whatever their day: up to the end of time. */
const at = fc.constantFrom(0, 1, 1_764_000_000_000, 4_000_000_000_000, 8.64e15);

const result = fc.constantFrom('right' as const, 'helped' as const, 'wrong' as const);
const shown = fc.record({ skill: fc.constantFrom(...skills), result, slip: fc.constant('x') });
const answer = fc
	.record({
		at,
		runId: fc.constantFrom('run', 'another'),
		day: iso,
		seconds: fc.constantFrom(0, 40, 86_400),
		skills: fc.array(shown, { maxLength: 4 })
	})
	.map((facts): KnownEvent => attempt(facts));

const course = fc.record({
	start: iso,
	exam: fc.option(iso),
	minutes: fc.constantFrom(5, 25, 240),
	weekdaysOff: fc.constantFrom([], [0], [0, 1, 2, 3, 4, 5, 6]),
	datesOff: fc.array(iso, { maxLength: 3 })
});
const setting = fc.record({ at, value: course }).map(({ at, value }): KnownEvent => {
	const { id, v, learner } = attempt();
	return { id, v, learner, at, day: '2026-11-26', type: 'setting', key: courseKey, value };
});

/**
 * Milliseconds in which a page must have all it shows: far above what it takes, and far below what a
 * plan that is counted day by day to the end of time takes, on a slow and busy machine too.
 */
const budget = 20_000;

async function* given<T>(list: readonly T[]): AsyncGenerator<T> {
	yield* list;
}

/** Everything that pages make of a log. */
async function pagesOf(log: readonly KnownEvent[], day: number) {
	let learning = structuredClone(learningFold.empty);
	let settings = courseFold.empty;
	for (const event of log) {
		learning = learningFold.apply(learning, event);
		settings = courseFold.apply(settings, event);
	}
	const known = { learning, settings: settings ?? firstSettings(isoOf(day)), day };
	const today = planner.today(known);
	const forecast = planner.forecast(known);
	const signal = new AbortController().signal;
	const reading = await readLog(given(log), { planner, today: day, signal, onRead: () => {} });
	const sittings = [];
	for await (const sitting of sittingsOf(given([...log].reverse()))) sittings.push(sitting);
	const exam = known.settings.exam === null ? null : dayOf(known.settings.exam);
	const run = planner.run(today, known, 'run', belowFrom(1));
	const planned = today.items.map((item) => ({ ...item, kind: item.kind.id }));
	const offToday = isOff(courseOf(known.settings).off, day);
	const home = { planner, learning, forecast, day, exam, offToday, planned };
	const attempts = log.filter((event) => event.type === 'attempt');
	const { first, last: worked } = daysWorked(run, attempts, day);
	const last = await lastBefore(attempts, first);
	const ahead = exam !== null && exam > day ? exam : null;
	const ended = { run, planner, day, worked, exam: ahead, attempts, last };
	const rest = planner.forecastOfRest(known);
	return {
		run,
		home: [todayView({ ...home, run: null }), todayView({ ...home, run })],
		streaks: streaksIn(attempts),
		end: runEnd({ ...ended, forecast: worked < day ? forecast : rest }),
		lead: [leadTitle, leadText].map((says) =>
			says({
				...{ today: day, exam, minutes: known.settings.minutes, forecast },
				answered: learning.tasks
			})
		),
		whys: today.items.map((item) => planner.why(item, learning, day)),
		forecast,
		stand: standRows(planner, forecast, learning),
		weak: weakSteps(planner, forecast, learning, null),
		givenUp: givenUpBy(planner, forecast.unreached),
		calendar: planEntries({ learner: sam, forecast, exam, label: planner.label }),
		reading,
		done: [...doneByDay(learning)],
		sittings
	};
}

test('whatever is in a log, every page has something to show, in time', async () => {
	const log = fc.array(fc.oneof({ weight: 3, arbitrary: answer }, setting), { maxLength: 25 });
	await fc.assert(
		fc.asyncProperty(log, iso.map(dayOf), async (events, day) => {
			const before = performance.now();
			const text = JSON.stringify(await pagesOf(events, day), (_, value: unknown) =>
				typeof value === 'number' && !Number.isFinite(value) ? 'not a number' : value
			);
			expect(text).not.toContain('not a number');
			expect(performance.now() - before).toBeLessThan(budget);
		}),
		{
			numRuns: 25,
			examples: [
				[
					[
						{
							...attempt(),
							type: 'setting',
							key: courseKey,
							value: { ...firstSettings('2026-11-26'), exam: '9999-12-31' }
						} as KnownEvent
					],
					dayOf('2026-11-26')
				]
			]
		}
	);
}, 120_000);
