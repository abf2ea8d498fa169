import { forecast } from '../../../src/lib/engine/schedule/forecast.ts';
import type { PlanInput } from '../../../src/lib/engine/schedule/plan.ts';
import type { Skill, TaskKind } from '../../../src/lib/engine/schedule/skill.ts';

const SKILLS = 80;
const DAYS = 60;
const ROUNDS = 30;

/** Milliseconds to re-plan 60 days over 80 skills: the median of 30 rounds. */
export function replanTime(): number {
	const input = bigInput();
	const times = Array.from({ length: ROUNDS }, () => {
		const start = performance.now();
		forecast(input);
		return performance.now() - start;
	});
	return times.sort((a, b) => a - b)[ROUNDS / 2] ?? NaN;
}

// seven topics; every other skill is aimed at, by three levels of a family; each task exercises two
function bigInput(): PlanInput {
	const id = (i: number) => `method/${i % SKILLS}`;
	const skills: Skill[] = Array.from({ length: SKILLS }, (_, i) => {
		return { id: id(i), topic: `topic ${i % 7}`, needs: i < 7 || i % 4 === 0 ? [] : [id(i - 7)] };
	});
	const kinds: TaskKind[] = skills.flatMap((skill, i) =>
		(i % 2 === 0 ? [1, 2, 3] : []).map((level) => {
			const family = `family ${i}`;
			return { id: `${family} ${level}`, family, aim: skill.id, skills: [skill.id, id(i + 1)] };
		})
	);
	return {
		syllabus: { skills, kinds },
		memories: new Map(),
		course: { start: 0, exam: DAYS, minutes: 25, off: { weekdays: [0], dates: [] } },
		pace: { task: 150, worked: 90 },
		day: 0
	};
}
