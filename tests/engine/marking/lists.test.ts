import { describe, expect, test } from 'vitest';
import { cardByCode, loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import type { Entry } from '../../../src/lib/engine/marking/verdict.ts';
import { developedWidth } from '../../../src/lib/engine/methods/developed-width.ts';
import { exactly } from '../../../src/lib/engine/quantity/exact.ts';
import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

const levels = [1, 2, 3] as const;
const seeds = [0, 1, 2];

/** Every family with a step that gives a list. */
const families = await Promise.all(
	['BW', 'LR'].map(async (code) => {
		const card = cardByCode(code);
		if (!card) throw new Error(`no family: ${code}`);
		return loadFamily(card);
	})
);
const tasks = families.flatMap((family) =>
	levels.flatMap((level) => seeds.map((seed) => drawTask(family, level, seed)))
);

/** Right and wrong entries of a task at every step that is answered. */
function entryOf(value: unknown, by: number): Entry | null {
	const off = (one: number) => exactly(one + by);
	if (typeof value === 'number') return { value: off(value), grain: 0.00005 };
	return Array.isArray(value) ? { value: value.map(off), grain: 0.00005 } : null;
}

function entriesOf({ method, right }: Task, by: number): [string, Entry][] {
	return Object.keys(method.steps).flatMap((key): [string, Entry][] => {
		const entry = method.steps[key]?.tolerance ? entryOf(right[key], by) : null;
		return entry ? [[key, entry]] : [];
	});
}

/** The list with so many values: its own first, then ones of another size. */
function withLength(entry: Entry, length: number): Entry {
	const own = Array.isArray(entry.value) ? entry.value : [];
	const value = Array.from({ length }, (_, i) => own[i] ?? exactly(1.2345 + i));
	return { ...entry, value };
}

function listsIn(task: Task): [string, number][] {
	return Object.keys(task.method.steps).flatMap((key): [string, number][] => {
		const value = task.right[key];
		const asked = kindAt(task.method, key).isList && task.method.steps[key]?.tolerance;
		return asked && Array.isArray(value) ? [[key, value.length]] : [];
	});
}

test('both families ask for lists', () => {
	const asked = new Set(tasks.flatMap((task) => listsIn(task).map(([key]) => key)));
	expect([...asked].sort()).toEqual(['K', 'allowances', 'flats', 'positions', 'setbacks', 'taken']);
});

test.each(tasks.map((task) => [task.number, task] as const))(
	'%s: a list of another length is told and not worked on with',
	(_, task) => {
		const wrong = entriesOf(task, 0.1357);
		for (const [key, wanted] of listsIn(task)) {
			const later = wrong.slice(wrong.findIndex(([step]) => step === key) + 1);
			const alone = mark(task, Object.fromEntries(later));
			const own = Object.fromEntries(wrong)[key];
			for (let length = 0; own && length <= wanted + 2; length++) {
				// As many as wanted, or one for all.
				if (length === wanted || length === 1) continue;
				const marked = mark(task, { [key]: withLength(own, length), ...Object.fromEntries(later) });
				const says =
					length < wanted
						? `${length} of ${wanted}: write all of them.`
						: `${length} values are here; ${wanted} are wanted.`;
				expect(marked[key]).toEqual({ kind: 'unread', says });
				expect(marked).toEqual({ [key]: marked[key], ...alone });
			}
		}
	}
);

test.each(tasks.map((task) => [task.number, task] as const))(
	'%s: any list with any later step wrong is marked',
	(_, task) => {
		const right = entriesOf(task, 0);
		const wrong = Object.fromEntries(entriesOf(task, 0.1357));
		for (const [key, wanted] of listsIn(task)) {
			const at = right.findIndex(([step]) => step === key);
			for (const [later] of right.slice(at + 1)) {
				for (let length = 0; length <= wanted + 2; length++) {
					const entries = Object.fromEntries(right);
					const list = withLength(entries[key] as Entry, length);
					const marked = mark(task, { ...entries, [key]: list, [later]: wrong[later] as Entry });
					expect(Object.keys(marked)).toHaveLength(right.length);
				}
			}
		}
	}
);

/** Setback 0.175 in, flats of 0.825 and 1.825 in. */
const angleClip = { R: 1 / 8, T: 0.05, legs: [1, 2], angles: [90] };

test('a list too short for the legs, with a width that is wrong', async () => {
	const task = await taskOf('BW', developedWidth, angleClip);
	const marked = verdictsOn(task, { taken: '0.2', width: '2' });
	expect([marked.taken?.kind, marked.width?.kind]).toEqual(['rework', 'rework']);
});

test('a width that was added up with a flat too many does not follow from it', async () => {
	const task = await taskOf('BW', developedWidth, angleClip);
	// 0.825 + 1.825 + 1.2345 and an allowance of 0.2312.
	const marked = verdictsOn(task, { flats: '0.825, 1.825, 1.2345', width: '4.1157' });
	expect(marked.flats).toEqual({ kind: 'unread', says: '3 values are here; 2 are wanted.' });
	expect(marked.width).toMatchObject({ kind: 'rework' });
});

describe('equal values given once', async () => {
	const given = { R: 1 / 8, T: 0.05, legs: [1, 2, 1], angles: [90, 90] };
	const channel = await taskOf('BW', developedWidth, given);
	const unlike = await taskOf('BW', developedWidth, { ...given, angles: [90, 45] });
	const right = { kind: 'accept', carried: false };

	test.each(['0.175', '0.175 at each', '2 x 0.175', '0.175; 0.175'])('%s is accepted', (text) => {
		expect(verdictsOn(channel, { setbacks: text })).toEqual({ setbacks: right });
	});

	test('one wrong value for all is worked on with', () => {
		const marked = verdictsOn(channel, { setbacks: '0.125 at each', taken: '.125, .25, .125' });
		expect(marked.setbacks?.kind).toBe('rework');
		expect(marked.taken).toEqual({ kind: 'accept', carried: true });
	});

	test('unlike ones are not', () => {
		expect(verdictsOn(unlike, { setbacks: '0.2 at each' }).setbacks).toEqual({
			kind: 'unread',
			says: '1 of 2: write all of them.'
		});
	});
});
