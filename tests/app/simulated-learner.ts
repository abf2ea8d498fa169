import type { Known, Planner } from '../../src/lib/app/plan/planner.ts';
import type { Below, Run, RunTask } from '../../src/lib/app/practice/run.ts';
import { drawTask, type Task } from '../../src/lib/engine/tasks/task.ts';
import { readTaskNumber } from '../../src/lib/engine/tasks/task-number.ts';
import type { Verdict } from '../../src/lib/engine/marking/verdict.ts';
import type { CourseSettings } from '../../src/lib/engine/schedule/course-settings.ts';
import { isoOf } from '../../src/lib/engine/schedule/day.ts';
import type { Attempt } from '../../src/lib/engine/schedule/event.ts';
import { evidenceOf } from '../../src/lib/engine/schedule/evidence.ts';
import { givensOf } from '../../src/lib/engine/tasks/givens.ts';
import {
	emptyLearning,
	type Learning,
	learningFold
} from '../../src/lib/engine/schedule/learning.ts';
import { noteVerdicts } from '../../src/lib/engine/schedule/note-verdicts.ts';

/** A task of a run as the simulated learner met it. */
export interface Met {
	readonly day: number;
	readonly runTask: RunTask;
	readonly task: Task;
	readonly right: boolean;
}

/** Somebody who does the plan's tasks day by day. */
export class SimulatedLearner {
	readonly met: Met[] = [];
	learning: Learning = emptyLearning();
	readonly #planner: Planner;
	readonly #settings: CourseSettings;
	readonly #below: Below;

	constructor(planner: Planner, settings: CourseSettings, below: Below) {
		this.#planner = planner;
		this.#settings = settings;
		this.#below = below;
	}

	known(day: number): Known {
		return { learning: this.learning, settings: this.#settings, day };
	}

	/** Does the day's run, and misses what `isMissed` says of its tasks. */
	practise(day: number, isMissed: (runTask: RunTask) => boolean): void {
		const planned = this.#planner.today(this.known(day));
		if (planned.items.length === 0) return;
		let run = this.#planner.run(planned, this.known(day), `run ${day}`, this.#below);
		for (let at = 0; at < run.tasks.length; at++) {
			run = { ...run, at };
			const runTask = run.tasks[at];
			if (runTask && runTask.standing !== 'shown') {
				run = this.#answer(run, runTask, day, !isMissed(runTask));
			}
		}
	}

	#answer(run: Run, runTask: RunTask, day: number, right: boolean): Run {
		const task = this.draw(runTask.number);
		this.met.push({ day, runTask, task, right });
		const attempt = attemptOn(task, right, day);
		this.learning = learningFold.apply(this.learning, attempt);
		const skill = attempt.skills.find(({ result }) => result === 'wrong')?.skill;
		const miss = { index: run.at, skill };
		return right ? run : this.#planner.missed(run, this.known(day), miss, this.#below);
	}

	draw(number: string): Task {
		const { code, level, seed } = readTaskNumber(number);
		const family = this.#planner.families.find((one) => one.code === code);
		if (!family) throw new Error(`no family: ${code}`);
		return drawTask(family, level, seed);
	}
}

let attempts = 0;

/** An attempt with every answer right, or with a first answer that nothing explains. */
export function attemptOn(task: Task, right: boolean, day: number): Attempt {
	const verdict = (i: number): Verdict =>
		right || i > 0
			? { kind: 'accept', carried: !right }
			: { kind: 'rework', cause: { kind: 'unknown' } };
	const verdicts = Object.fromEntries(task.drawn.asked.map((key, i) => [key, verdict(i)]));
	attempts++;
	return {
		id: `a0000000-0000-4000-8000-${String(attempts).padStart(12, '0')}`,
		v: 1,
		learner: '5a000000-0000-4000-8000-000000000001',
		at: attempts,
		day: isoOf(day),
		type: 'attempt',
		task: task.number,
		level: task.id.level,
		runId: 'run',
		source: 'plan',
		typed: {},
		verdicts: noteVerdicts(verdicts),
		opened: [],
		byStep: false,
		worked: false,
		seconds: 100,
		skills: evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [] }),
		givens: givensOf(task)
	};
}
