import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import type { Draw, Family } from '../../../src/lib/engine/families/family.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { look } from '../../../src/lib/engine/marking/look.ts';
import { exactly } from '../../../src/lib/engine/quantity/exact.ts';
import type { ReadValue } from '../../../src/lib/engine/quantity/reading.ts';
import { isList, type Value } from '../../../src/lib/engine/quantity/value.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { withSlip } from '../../../src/lib/engine/solver/evaluate.ts';
import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { familyOf } from './family-of.ts';

const families = await loadFamilies();
const drawsEach = 400;

describe.each(families.map((family) => [family.id, family] as const))('%s', (_, family) => {
	test.each(levels)('level %i: no chief slip is accepted', (level) => {
		const passed = new Set<string>();
		for (let seed = 0; seed < drawsEach; seed++) {
			const task = drawTask(family, level, seed * 2503);
			for (const [key, ids = []] of Object.entries(task.drawn.chief ?? {})) {
				if (!task.drawn.asked.includes(key)) continue;
				for (const id of ids) {
					if (entriesOf(task, key, id).some((entry) => isAccepted(task, key, entry))) {
						passed.add(`${task.number} ${key} by ${id}`);
					}
				}
			}
		}
		expect([...passed]).toEqual([]);
	});
});

/** What somebody who makes the slip may type: all of it, or rounded to the thousandth. */
function entriesOf(task: Task, key: string, id: string): Value[] {
	const value = slipped(task, id)?.[key];
	if (value === undefined) return [];
	const kind = kindAt(task.method, key);
	return [value, kind.map(value, (one) => Math.round(one * 1000) / 1000) as Value];
}

function slipped(task: Task, id: string): Values | null {
	try {
		return withSlip(task.method, task.right, id);
	} catch (error) {
		if (error instanceof TradeError) return null;
		throw error;
	}
}

/** Marking accepts what a look at the entry accepts; it only explains the others besides. */
function isAccepted(task: Task, key: string, value: Value): boolean {
	const { verdicts } = look(task, { [key]: { value: typed(value), grain: 0 } });
	return verdicts[key]?.kind === 'accept';
}

function typed(value: Value): ReadValue {
	if (typeof value === 'number') return exactly(value);
	if (!isList(value)) return value;
	return value.map((one) => (typeof one === 'number' ? exactly(one) : one));
}

describe('a draw', () => {
	const given = { layers: [0.04, 0.04], D: 1 / 8 };
	const drawn = { given, story: '', question: '', asked: ['length'], cautions: [] } as const;

	async function lengthFamily(draw: Partial<Draw>): Promise<Family> {
		return { ...(await familyOf('rivet-length')), draw: () => ({ ...drawn, ...draw }) };
	}

	test('in which a chief slip passes is not asked, and says family, level and slip', async () => {
		const family = await lengthFamily({ chief: { length: ['oneLayer', 'oneD'] } });
		expect(() => drawTask(family, 2, 1)).not.toThrow();
		// 0.2745 in is needed, and 0.2585 in without the thin layer: 5/16 in both ways.
		const passing = await lengthFamily({
			given: { layers: [0.071, 0.016], D: 1 / 8 },
			chief: { length: ['thinLeftOut'] }
		});
		expect(() => drawTask(passing, 2, 1)).toThrow(
			/rivet-length, level 2.*the chief slip thinLeftOut leads to the right length/
		);
	});

	test('that names a slip or a step which the method has not is refused', async () => {
		const slip = await lengthFamily({ chief: { length: ['nobody'] } });
		expect(() => drawTask(slip, 1, 1)).toThrow(
			/chief slips of length name nobody, which is no slip of rivet-length.*oneD.*oneMore/
		);
		const step = await lengthFamily({ chief: { nothing: [] } });
		expect(() => drawTask(step, 1, 1)).toThrow('no step of rivet-length');
	});
});
