import { expect, test } from 'vitest';
import { loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import { runEnd } from '../../../src/lib/app/practice/run-end.ts';
import type { Run, RunTask } from '../../../src/lib/app/practice/run.ts';
import { firstSettings } from '../../../src/lib/engine/schedule/course-settings.ts';
import { isoOf } from '../../../src/lib/engine/schedule/day.ts';
import { emptyLearning, learningFold } from '../../../src/lib/engine/schedule/learning.ts';
import { belowFrom } from '../seeded-chance.ts';
import { attemptOn, SimulatedLearner } from '../simulated-learner.ts';

const planner = await loadPlanner();
const day = 20_784;
const settings = firstSettings(isoOf(day));
const learner = new SimulatedLearner(planner, settings, belowFrom(1));

/** An attempt at a task of the rivet length in a run, one sheet left out of the grip. */
function slipped(runId: string) {
	const attempt = attemptOn(learner.draw('RL1-00C8-8D'), false, day);
	return { ...attempt, runId, skills: [{ skill, result: 'wrong' as const, slip: 'oneLayer' }] };
}

const skill = 'piece/grip';
const task: RunTask = { number: 'RL1-00C8-8D', standing: 'wrong', charged: [skill] };
const run: Run = { id: 'second', topic: 'mixed', level: 1, at: 0, day, budget: 0, tasks: [task] };

function endAfter(...runIds: string[]) {
	const attempts = runIds.map(slipped);
	const learning = attempts.reduce(learningFold.apply, emptyLearning());
	const forecast = planner.forecastOfRest({ learning, settings, day });
	const facts = { run, planner, forecast, day, worked: day, exam: null, last: null };
	return runEnd({ ...facts, attempts });
}

test('the end of a run counts its own slips, and not those of another run that day', () => {
	const timesIn = (...runIds: string[]) => endAfter(...runIds).facts.map(({ big }) => big);
	expect(timesIn('first', 'first', 'second')).not.toContain('3 ×');
	expect(timesIn('first', 'second', 'second')).toContain('2 ×');
});

test('the next day with tasks is no more today once its work is done', () => {
	expect(endAfter('second').next?.day).toBe(day + 1);
});

test('the end of a run says what the next day is for: what was missed comes back', () => {
	const { goal, rows } = endAfter('second');
	expect(rows[0]?.returns).toBe(day + 1);
	expect(goal?.head).toMatch(/^Tomorrow: \d+ tasks?, about \d+ minutes?[.]$/);
	expect(goal?.says).toBe('Length from the stack comes back, missed this time.');
});

test('what was right at first is counted once, unless there is a sitting to hold it against', () => {
	expect(endAfter('second').facts.map(({ says }) => says)).not.toContain('right at first.');
});

/** The end of a run of tasks that were right at first, aimed at steps that return as `comesUp` has it. */
function endOf(
	rows: readonly [number: string, skill: string, reason: 'new' | 'sweep'][],
	days: readonly number[]
) {
	const learning = emptyLearning();
	const known = { learning, settings, day };
	const forecast = {
		...planner.forecastOfRest(known),
		comesUp: new Map(rows.map(([, one], i) => [one, [days[i] ?? day + 1]]))
	};
	const tasks = rows.map(([number, one, kind]): RunTask => ({
		...{ number, standing: 'right' },
		planned: {
			...{ kind: number.slice(0, 3), skill: one, seconds: 60, worked: false, reading: 0 },
			...{ reason: { kind, skill: one, exam: day + 9 }, returned: false }
		}
	}));
	return runEnd({
		...{ run: { ...run, tasks }, planner, forecast, day, worked: day, exam: null, last: null },
		attempts: []
	});
}

test('what is new is up again on one day, or one by one', () => {
	const rows: Parameters<typeof endOf>[0] = [
		['RL1-014T-7R', skill, 'new'],
		['RL1-014T-7R', 'rivet-length/needed', 'new']
	];
	expect(endOf(rows, [day + 1, day + 1]).facts[0]?.more).toBe('Up again tomorrow.');
	expect(endOf(rows, [day + 3, day + 1]).facts[0]?.more).toBe(
		'Up again one by one, the first tomorrow.'
	);
});

test('a day on which most return is told once', () => {
	const rows = Array.from({ length: 5 }, (_, i): Parameters<typeof endOf>[0][number] => [
		...(['RL1-014T-7R', `rivet-length/${i}`, 'sweep'] as const)
	]);
	const days = [1, 1, 1, 1, 2].map((one) => day + one);
	expect(endOf(rows, days).returns).toBe(day + 1);
	expect(
		endOf(
			rows,
			[1, 1, 2, 2, 3].map((one) => day + one)
		).returns
	).toBeNull();
});

test('a step that returns in other work alone is told to come back as a part of it', () => {
	const learning = emptyLearning();
	const forecast = planner.forecastOfRest({ learning, settings, day });
	const other = planner.syllabus.kinds.find(
		({ family, skills }) => family !== 'RL' && skills.includes(skill)
	);
	const next = { day: day + 1, phase: 'build', tasks: 1, minutes: 2 } as const;
	const facts = { run, planner, day, worked: day, exam: null, last: null, attempts: [] };
	const { goal } = runEnd({
		...facts,
		forecast: {
			...{ ...forecast, days: [next], comesUp: new Map([[skill, [day + 1]]]) },
			kindsOn: new Map([[day + 1, other ? [other] : []]])
		}
	});
	expect(goal?.says).toBe(
		'Length from the stack, missed this time, comes back as a part of other work.'
	);
});
