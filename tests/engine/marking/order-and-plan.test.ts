import { expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import type { Plan } from '../../../src/lib/engine/quantity/value.ts';
import { order } from '../../../src/lib/engine/quantity/kinds/order.ts';
import { plan } from '../../../src/lib/engine/quantity/kinds/plan.ts';
import { knownEvent } from '../../../src/lib/engine/schedule/event.ts';
import { evidenceOf } from '../../../src/lib/engine/schedule/evidence.ts';
import { noteVerdicts } from '../../../src/lib/engine/schedule/note-verdicts.ts';
import { length } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import type { TradeFunction } from '../../../src/lib/engine/solver/trade-function.ts';
import { method, slip, step } from '../../../src/lib/engine/solver/write.ts';
import { compiledHere } from '../solver/compile-here.ts';
import { thousandths } from '../../../src/lib/engine/trade/tolerances.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

const tolerance = { amount: '0', why: 'It is one or it is not.' };
const right = { kind: 'accept', carried: false };

/** A function of the test; what it gives is no number, which the type of values does not tell. */
function giving(gives: string, run: (...values: never[]) => unknown, takes: string[] = []) {
	return { takes, gives, run: run as TradeFunction['run'], show: () => [] } satisfies TradeFunction;
}

const things = ['drill', 'deburr', 'rivet'];
const work = compiledHere(
	method({
		id: 'made-up-order',
		title: 'The order of the work',
		given: { size: given(length, 'Size') },
		steps: {
			work: step('inOrder()', 'Order of the work', {
				kind: order({ id: 'work', noun: 'the order of the work', things }),
				tolerance,
				slips: { burrs: slip('burrsLeft()', 'Burrs hold the sheets apart.') }
			})
		}
	}),
	{
		inOrder: giving('text[]', () => things),
		burrsLeft: giving('text[]', () => ['drill', 'rivet', 'deburr'])
	}
);

test('an order is marked: right, by a slip, unexplained, too few', async () => {
	const task = await taskOf('RT', work, { size: 1 });
	const marked = (text: string) => verdictsOn(task, { work: text }).work;
	expect(marked('ABC')).toEqual(right);
	expect(marked('drill, deburr, rivet')).toEqual(right);
	expect(marked('ACB')).toEqual({ kind: 'rework', cause: { kind: 'slip', slips: ['burrs'] } });
	expect(marked('CBA')).toEqual({ kind: 'rework', cause: { kind: 'unknown', here: true } });
	expect(marked('AB')).toEqual({ kind: 'unread', says: '2 of 3: write all of them.' });
});

const used = (parts: Plan['parts'][number]) =>
	parts.reduce((sum, { count, size }) => sum + count * size, 0);

const cuts = compiledHere(
	method({
		id: 'made-up-plan',
		title: 'Two pieces of a size out of bars of 24 in',
		given: { size: given(length, 'Size') },
		steps: {
			piece: step('size', 'Piece', { tolerance: thousandths }),
			cuts: step('cutList(piece)', 'Cut list', {
				kind: plan({
					id: 'cuts',
					noun: 'a cut list',
					part: 'bar',
					size: length,
					example: '2x 10',
					rules: [
						({ parts }) => (parts.some((bar) => used(bar) > 24) ? 'A bar is 24 in long.' : null),
						({ parts }, { piece }) =>
							parts.flat().some((one) => one.size !== piece) ? 'Another size is wanted.' : null
					],
					score: ({ parts }) => parts.length,
					notBest: (bars, best) => `It holds with ${bars} bars; ${best} is enough.`
				}),
				tolerance
			}),
			bars: step('2 * size', 'Length used', { tolerance })
		}
	}),
	{
		cutList: giving('text', (size: number) => ({ parts: [[{ count: 2, size }]] }), ['length'])
	}
);

test('a plan is marked: right in any form, holds but not best, cannot be made', async () => {
	const task = await taskOf('RT', cuts, { size: 10 });
	const marked = (text: string) => verdictsOn(task, { cuts: text }).cuts;
	expect(marked('2x 10')).toEqual(right);
	expect(marked('10 + 10')).toEqual(right);
	const holds = { kind: 'holds', says: 'It holds with 2 bars; 1 is enough.' } as const;
	expect(marked('1x 10; 1x 10')).toEqual(holds);
	expect(sayVerdict(task, holds, 'cuts')).toBe(holds.says);
	expect(marked('3x 10')).toEqual({
		kind: 'rework',
		cause: { kind: 'breaks', says: 'A bar is 24 in long.' }
	});
	expect(marked('2x 9')).toMatchObject({ cause: { kind: 'breaks' } });
});

test('a plan that holds, for the piece or for the own wrong one, is told as that', async () => {
	const task = await taskOf('RT', cuts, { size: 10 });
	const marked = (text: string) => verdictsOn(task, { piece: '9', cuts: text }).cuts;
	expect(marked('1x 10; 1x 10')?.kind).toBe('holds');
	expect(marked('1x 9; 1x 9')?.kind).toBe('holds');
	expect(marked('2x 9')).toEqual({ kind: 'accept', carried: true });
});

test('one that holds counts as helped, and older versions read its record', async () => {
	const task = await taskOf('RT', cuts, { size: 10 }, ['cuts']);
	const verdicts = verdictsOn(task, { cuts: '1x 10; 1x 10' });
	const shown = evidenceOf(task, { verdicts, opened: [], byStep: true, charged: [] });
	expect(shown).toEqual([{ skill: 'made-up-plan/cuts', result: 'helped' }]);
	const noted = noteVerdicts(verdicts);
	expect(noted).toEqual({ cuts: { kind: 'rework', cause: 'not-best', slips: [] } });
	const event = {
		type: 'attempt',
		id: '00000000-0000-4000-8000-000000000001',
		v: 1,
		learner: '00000000-0000-4000-8000-000000000002',
		at: 0,
		day: '2026-01-01',
		task: 'RT1-0000-1',
		runId: 'run',
		source: 'practice',
		typed: {},
		verdicts: noted,
		opened: [],
		byStep: false,
		worked: false,
		seconds: 1,
		skills: [],
		givens: ''
	};
	expect(knownEvent(event)).toMatchObject({ verdicts: noted });
});
