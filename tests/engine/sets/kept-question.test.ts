import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import {
	kept,
	keptQuestion,
	type KeptQuestion,
	reopened
} from '../../../src/lib/engine/sets/kept-question.ts';
import { composeRehearsal } from '../../../src/lib/engine/sets/rehearsal.ts';
import { writeTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';

const families = await loadFamilies();
const questions = ['a', 'b', 'c', 'd', 'e', 'f'].flatMap((seed) =>
	composeRehearsal(seed, families, 60)
);
const asKept = questions.map(kept);

test('a question is opened again as it was asked, from text', async () => {
	const causes = new Set<string>();
	for (const [i, question] of questions.entries()) {
		const read = v.parse(keptQuestion, JSON.parse(JSON.stringify(asKept[i])));
		expect(await reopened(read), question.task.number).toEqual(question);
		for (const { cause } of question.options) causes.add(`${cause?.kind} ${cause?.slips.length}`);
	}
	// Every kind of option has been through it.
	expect([...causes].sort()).toEqual([
		'either 2',
		'either 3',
		'either 4',
		'slip 1',
		'slip 2',
		'undefined undefined'
	]);
});

test('the order of the options is the one that was kept', async () => {
	const [one] = asKept as [KeptQuestion];
	const turned = await reopened({ ...one, options: one.options.toReversed() });
	expect(turned?.options).toEqual(questions[0]?.options.toReversed());
	expect(turned?.options[turned.right]?.cause).toBeNull();
});

describe('is not opened as something else', () => {
	const [one] = asKept as [KeptQuestion];
	const [{ task }] = questions as [(typeof questions)[0]];
	const without = one.options.filter((own) => own === null);

	test.each<[string, KeptQuestion]>([
		['a family that is gone', { ...one, task: writeTaskNumber({ ...task.id, code: 'ZZ' }) }],
		['another revision', { ...one, task: writeTaskNumber({ ...task.id, rev: 31 }) }],
		['a number that is none', { ...one, task: 'RL2' }],
		['a step that is not asked', { ...one, key: 'toString' }],
		['a slip that is gone', { ...one, options: [...without, { kind: 'slip', slips: ['gone'] }] }],
		[
			'the name of what every object has',
			{ ...one, options: [...without, { kind: 'slip', slips: ['toString'] }] }
		]
	])('with %s', async (_, changed) => {
		expect(await reopened(changed)).toBeNull();
	});

	test.each<[string, unknown]>([
		['no right option', { ...one, options: one.options.filter((own) => own !== null) }],
		['two right ones', { ...one, options: [null, null] }],
		['one option', { ...one, options: [null] }],
		['no task', { ...one, task: undefined }]
	])('with %s', (_, changed) => {
		expect(v.safeParse(keptQuestion, changed).success).toBe(false);
	});
});
