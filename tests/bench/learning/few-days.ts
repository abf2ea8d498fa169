import { SHIPPED } from '../../../src/lib/engine/schedule/policy.ts';
import type { Syllabus } from '../../../src/lib/engine/schedule/skill.ts';
import { chanceOf } from './chance.ts';
import { LEVELS, SKILLS, TOPICS, ground, syllabus } from './ground.ts';
import type { World } from './learner.ts';
import { table } from './markdown.ts';
import { Planned } from './rivals/planned.ts';
import { shareRight } from './simulate.ts';
import { type Estimate, estimate, plain } from './statistics.ts';
import { worlds } from './worlds.ts';

const LEARNERS = 300;
const A_DAY = 4;
const LENGTHS = [2, 4, 7];

/** The ground as a course lists it, topic after topic. */
const byTopic: Syllabus = {
	skills: inTopics(syllabus.skills),
	kinds: inTopics(syllabus.kinds)
};

function inTopics<T>(levelByLevel: readonly T[]): T[] {
	return Array.from({ length: SKILLS }, (_, i) => (i % LEVELS) * TOPICS + Math.floor(i / LEVELS))
		.map((place) => levelByLevel[place])
		.filter((one) => one !== undefined);
}

const orders = [
	{ label: 'topic after topic', policy: { ...SHIPPED, firstSteps: 0 } },
	{ label: 'shipped: every topic begun first', policy: SHIPPED }
];

/** Share right on the exam day when few days are left: of all, and of the topic that is worst off. */
export function fewDaysTable(): string {
	const head = [`days, order (${A_DAY} problems a day)`, ...worlds.map((world) => world.label)];
	const rows = LENGTHS.flatMap((exam) =>
		orders.map(({ label, policy }) => [
			`${exam}, ${label}`,
			...worlds.map((world) => {
				const { all, worst } = outcomeOf(world, exam, policy);
				return `${plain(all)} / ${plain(worst)}`;
			})
		])
	);
	return table(head, rows);
}

function outcomeOf(
	world: World,
	exam: number,
	policy: typeof SHIPPED
): { all: Estimate; worst: Estimate } {
	const off = { weekdays: [], dates: [] };
	const days = Array.from({ length: exam }, (_, day) => day);
	const shares = Array.from({ length: LEARNERS }, (_, seed) => {
		const learner = world.learner(chanceOf(`${world.id} few ${seed}`), ground);
		const tutor = new Planned(A_DAY * exam, { exam, off, days }, policy, byTopic);
		for (const day of days) {
			tutor.open(day);
			for (let skill = tutor.next(); skill !== undefined; skill = tutor.next()) {
				tutor.saw(skill, learner.answer(skill, day), day);
			}
		}
		const topics = Array.from({ length: TOPICS }, (_, topic) => topicRight(learner, topic, exam));
		return { all: shareRight(learner, exam), worst: Math.min(...topics) };
	});
	return {
		all: estimate(shares.map(({ all }) => all)),
		worst: estimate(shares.map(({ worst }) => worst))
	};
}

function topicRight(learner: ReturnType<World['learner']>, topic: number, day: number): number {
	const skills = Array.from({ length: LEVELS }, (_, level) => level * TOPICS + topic);
	return skills.reduce((sum, skill) => sum + learner.chance(skill, day), 0) / LEVELS;
}
