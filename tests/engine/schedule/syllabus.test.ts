import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { type Level, levels } from '../../../src/lib/engine/families/level.ts';
import { evidenceOf } from '../../../src/lib/engine/schedule/evidence.ts';
import {
	leadingTo,
	needsOf,
	skillOf,
	syllabusOf
} from '../../../src/lib/engine/schedule/syllabus.ts';
import { length } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { method, step } from '../../../src/lib/engine/solver/write.ts';
import { compiledHere } from '../solver/compile-here.ts';

const families = await loadFamilies();
const { skills, kinds } = syllabusOf(families);

/** The methods of the tasks that a family deals. */
const methodsOf = new Map(
	families.map((family) => {
		const seeds = Array.from({ length: 40 }, (_, seed) => seed);
		const tasks = levels.flatMap((level) => seeds.map((seed) => drawTask(family, level, seed)));
		return [family, new Set([family.method, ...tasks.map((task) => task.method)])];
	})
);

function using(skill: string) {
	return families.filter((family) =>
		[...(methodsOf.get(family) ?? [])].some(({ steps }) =>
			Object.values(steps).some((one) => one.skill === skill)
		)
	);
}

describe('the skills', () => {
	test('are steps of methods, each once', () => {
		expect(new Set(skills.map(({ id }) => id)).size).toBe(skills.length);
		for (const { id } of skills) {
			expect(using(id).length, id).toBeGreaterThan(0);
		}
	});

	test('need only skills of a method they are part of, and none needs itself by any way round', () => {
		const met = new Set<string>();
		for (const { id, needs } of skills) {
			for (const need of needs) {
				const together = using(need).filter((family) => using(id).includes(family));
				expect(together, `${id} needs ${need}`).not.toEqual([]);
				// Needs stand earlier in the list, so no chain of them comes back.
				expect(met.has(need), `${id} needs ${need}`).toBe(true);
			}
			met.add(id);
		}
	});

	test('stand under the topic of a family they are part of', () => {
		for (const { id, topic } of skills) {
			expect(using(id).map((family) => family.topic)).toContain(topic);
		}
	});
});

describe('the kinds of task', () => {
	test('are every family at every level, easy ones first', () => {
		expect(kinds.map(({ id }) => id)).toEqual(
			levels.flatMap((level) => families.map(({ code }) => `${code}${level}`))
		);
	});

	test('exercise skills that are there, the last of them aimed at', () => {
		const known = new Set(skills.map(({ id }) => id));
		for (const kind of kinds) {
			expect(kind.skills.length, kind.id).toBeGreaterThan(0);
			expect(kind.skills.filter((id) => !known.has(id))).toEqual([]);
			expect(kind.aim).toBe(kind.skills.at(-1));
		}
	});

	test('leave no skill without practice', () => {
		const exercised = new Set(kinds.flatMap((kind) => kind.skills));
		expect(skills.filter(({ id }) => !exercised.has(id))).toEqual([]);
	});

	// Otherwise a skill would be planned for again and again, and never be met.
	test.each(kinds)(
		'$id: right answers show its skills, and what another kind practises',
		({ id, family: code, skills }) => {
			const family = families.find((one) => one.code === code);
			if (!family) throw new Error(`no family: ${code}`);
			const shown = new Set<string>();
			for (let seed = 0; seed < 200; seed++) {
				const task = drawTask(family, Number(id[2]) as Level, seed * 37);
				const accepted = task.drawn.asked.map((key) => [key, { kind: 'accept', carried: false }]);
				const verdicts = Object.fromEntries(accepted);
				const found = evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [] });
				for (const { skill } of found) shown.add(skill);
			}
			expect([...shown]).toEqual(expect.arrayContaining([...skills]));
			// Shown by some tasks of the kind only: another kind is planned for it.
			for (const skill of [...shown].filter((one) => !skills.includes(one)))
				expect(kinds.some((kind) => kind.skills.includes(skill))).toBe(true);
		}
	);
});

describe('what a step rests on', () => {
	const bend = compiledHere(
		method({
			id: 'bend',
			title: 'Bend',
			given: { R: given(length, 'Radius'), T: given(length, 'Thickness') },
			steps: {
				sum: step('R + T', 'Sum'),
				setback: step('sum', 'Setback'),
				alone: step('2 * T', 'Twice the thickness'),
				total: step('setback + max(R, T) + (1 in)', 'Total')
			}
		})
	);

	test('are the earlier steps in its formula, as whole words', () => {
		expect(needsOf(bend, 'sum')).toEqual([]);
		expect(needsOf(bend, 'setback')).toEqual(['sum']);
		expect(needsOf(bend, 'total')).toEqual(['setback']);
	});

	test('leads to it by way of others too, and nothing else does', () => {
		expect(leadingTo(bend, 'total')).toEqual(['sum', 'setback', 'total']);
		expect(leadingTo(bend, 'alone')).toEqual(['alone']);
	});

	test('a skill is named by method and step', () => {
		expect(skillOf(bend, 'total')).toBe('bend/total');
	});
});
