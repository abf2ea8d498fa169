import { forecast } from '../../../src/lib/engine/schedule/forecast.ts';
import { SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import { chanceOf } from './chance.ts';
import { ground, syllabus } from './ground.ts';
import type { World } from './learner.ts';
import { BUDGETS, EXAM } from './main-table.ts';
import { table } from './markdown.ts';
import { Planned, courseFor, pace } from './rivals/planned.ts';
import { shareRight } from './simulate.ts';
import { estimate } from './statistics.ts';
import { timetableOf } from './timetable.ts';
import { worlds } from './worlds.ts';

const LEARNERS = 60;
const LOOKS = [0, 14, 28];

/** Share right on exam day: what the plan page said on a day, and in the last column what came. */
export function forecastTable(): string {
	const looks = LOOKS.map((day) => `said on day ${day}`);
	const head = ['world, problems', ...looks, 'came', 'off by, day 28'];
	const rows = BUDGETS.flatMap((problems) =>
		worlds.map((world) => {
			const learners = Array.from({ length: LEARNERS }, (_, seed) => follow(world, problems, seed));
			const mean = (xs: number[]) => estimate(xs).mean.toFixed(0);
			const said = LOOKS.map((_, i) => mean(learners.map((l) => l.said[i] ?? NaN)));
			const off = mean(learners.map((l) => Math.abs((l.said.at(-1) ?? NaN) - l.came)));
			return [`${world.label}, ${problems}`, ...said, mean(learners.map((l) => l.came)), off];
		})
	);
	return table(head, rows);
}

function follow(world: World, problems: number, seed: number): { said: number[]; came: number } {
	const learner = world.learner(chanceOf(`${world.id} ${seed}`), ground);
	const timetable = timetableOf(seed, EXAM);
	const course = courseFor(problems, timetable);
	const tutor = new Planned(problems, timetable, SHIPPED);
	const said: number[] = [];
	for (let day = 0; day < EXAM; day++) {
		const { memories } = tutor;
		if (LOOKS.includes(day)) {
			said.push(forecast({ syllabus, memories, course, pace, day }).all.then);
		}
		if (!timetable.days.includes(day)) continue;
		tutor.open(day);
		for (let skill = tutor.next(); skill !== undefined; skill = tutor.next()) {
			tutor.saw(skill, learner.answer(skill, day), day);
		}
	}
	return { said, came: shareRight(learner, EXAM) };
}
