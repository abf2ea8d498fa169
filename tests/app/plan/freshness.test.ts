import { describe, expect, test } from 'vitest';
import { loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import { freshTasks } from '../../../src/lib/engine/schedule/learning.ts';
import { belowFrom } from '../seeded-chance.ts';
import { SimulatedLearner } from '../simulated-learner.ts';

const planner = await loadPlanner();
const start = '2026-03-02';

/** Tasks that somebody meets in the plan's order: at least four hundred. */
function metTasks(exam: string | null, minutes: number, missesIn: number, seed: number): Task[] {
	const settings = { start, exam, minutes, weekdaysOff: [0], datesOff: [] };
	const below = belowFrom(seed);
	const learner = new SimulatedLearner(planner, settings, below);
	for (let day = dayOf(start); learner.met.length < 400; day++)
		learner.practise(day, () => below(10) < missesIn);
	return learner.met.map(({ task }) => task);
}

const numbersOf = ({ id, drawn }: Task) => `${id.code} ${JSON.stringify(drawn.given)}`;
const questionOf = (task: Task) =>
	`${numbersOf(task)} ${JSON.stringify([task.drawn.asked, task.drawn.told])}`;

/** The tasks whose text was among the fifty before them. */
function repeats(tasks: readonly Task[], textOf: (task: Task) => string): Task[] {
	const texts = tasks.map(textOf);
	return tasks.filter((_, i) =>
		texts.slice(Math.max(0, i - freshTasks), i).includes(texts[i] ?? '')
	);
}

const courses = [
	{ who: 'nobody with an exam', exam: null, minutes: 25, missesIn: 3 },
	{ who: 'six weeks to the exam', exam: '2026-04-13', minutes: 25, missesIn: 3 },
	{ who: 'an hour a day, all right', exam: '2026-04-13', minutes: 60, missesIn: 0 },
	{ who: 'ten minutes a day', exam: '2026-09-01', minutes: 10, missesIn: 4 },
	{ who: 'nearly all wrong', exam: null, minutes: 25, missesIn: 8 }
];

describe.each(courses)('with $who', ({ exam, minutes, missesIn }) => {
	const runs = [1, 2, 3].map((seed) => metTasks(exam, minutes, missesIn, seed));

	test('no question with the same numbers is among the last fifty tasks', () => {
		for (const tasks of runs) {
			expect(repeats(tasks, questionOf).map(({ number }) => number)).toEqual([]);
		}
	});

	test('numbers come again with another question only where the trade has ten sets or fewer', () => {
		for (const tasks of runs) {
			const again = repeats(tasks, numbersOf).map(({ id }) => id.code);
			// Rivet diameters, shop heads, edge distances and pilot drills.
			expect(again.filter((code) => !['RT', 'SH', 'ED', 'HP'].includes(code))).toEqual([]);
		}
	});
});

/** A task as somebody sees it who only learns answers. */
function card({ id, drawn, right }: Task) {
	const asked = `${id.code} ${drawn.asked.join()}`;
	const numbers = JSON.stringify([drawn.given, drawn.told]);
	return { asked, numbers, answer: JSON.stringify(drawn.asked.map((key) => right[key])) };
}

test('answers learnt by heart are worth no more than chance', () => {
	let [byHeart, byChance, asked] = [0, 0, 0];
	for (let seed = 1; seed <= 5; seed++) {
		const cards = metTasks('2026-04-13', 25, 3, seed).map(card);
		const below = belowFrom(seed);
		cards.forEach((card, i) => {
			const alike = (one: typeof card) => one !== card && one.asked === card.asked;
			// By heart: the answer to the same numbers, else to the newest such question.
			const seen = cards
				.slice(Math.max(0, i - freshTasks), i)
				.filter(alike)
				.reverse();
			const known = seen.find(({ numbers }) => numbers === card.numbers) ?? seen[0];
			if (!known) return;
			asked++;
			if (known.answer === card.answer) byHeart++;
			// By chance: the answer to any other such question.
			const all = cards.filter(alike);
			if (all[below(all.length)]?.answer === card.answer) byChance++;
		});
	}
	expect(asked).toBeGreaterThan(1000);
	expect(byHeart / asked).toBeLessThanOrEqual(byChance / asked + 0.01);
});
