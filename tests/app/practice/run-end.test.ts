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
