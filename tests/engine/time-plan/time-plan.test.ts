import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planPanel } from '../../../src/lib/engine/panel/plan.ts';
import { knownEvent } from '../../../src/lib/engine/schedule/event.ts';
import { layOut, momentOf, partsOf, workOn } from '../../../src/lib/engine/time-plan/lay-out.ts';
import {
	emptySettings,
	paceOf,
	type SavedTimePlan,
	timePlanOf
} from '../../../src/lib/engine/time-plan/saved.ts';
import { stepsOf, type TimeStep } from '../../../src/lib/engine/time-plan/steps.ts';

const day = '2026-11-26';
const fresh: SavedTimePlan = { settings: emptySettings, steps: new Map() };
const slow = { pace: { factor: 1, steps: 0 }, shares: {}, spent: new Map<string, number>() };

const step = (id: string, left: number, more: Partial<TimeStep> = {}): TimeStep => ({
	id,
	name: id,
	guess: left,
	minutes: left,
	left,
	state: 'open',
	isOwn: false,
	canWait: false,
	isOut: false,
	...more
});

const hours = (from: number, to: number, on = day) => ({ day: on, from: from * 60, to: to * 60 });
const due = { day: '2026-11-30', time: 11 * 60 };

describe('steps laid into the time at the bench', () => {
	test('worked by hand: two times, a step over both, slack', () => {
		const times = [hours(14, 16), hours(9, 10, '2026-11-27')];
		const now = momentOf(day, 14 * 60 + 10);
		const layout = layOut([step('a', 60), step('b', 80)], { due, times }, now);
		// 110 min today and 60 tomorrow; 140 of work.
		expect(layout).toMatchObject({ time: 170, work: 140, slack: 30, drop: [] });
		const [a, b] = layout.placed;
		expect(a?.pieces).toEqual([{ from: now, to: now + 60 }]);
		const nine = momentOf('2026-11-27', 9 * 60);
		expect(b?.pieces).toEqual([
			{ from: now + 60, to: now + 110 },
			{ from: nine, to: nine + 30 }
		]);
		expect(workOn(partsOf(now).day, layout)).toMatchObject([
			{ minutes: 60, begins: false },
			{ minutes: 50, begins: true }
		]);
	});

	test('what finds no time is late, and what may wait is named first', () => {
		const steps = [step('drive', 50), step('inspect', 20), step('tag', 10, { canWait: true })];
		const layout = layOut(steps, { due, times: [hours(9, 10)] }, momentOf(day, 0));
		expect(layout.slack).toBe(-20);
		expect(layout.placed.map(({ late }) => late)).toEqual([0, 10, 10]);
		// Ten minutes are still missing then.
		expect(layout.drop.map(({ id }) => id)).toEqual(['tag']);
	});

	test('a time ends with the hand-in, and times that overlap count once', () => {
		const times = [hours(9, 12, due.day), hours(10, 14, due.day)];
		expect(layOut([], { due, times }, momentOf(day, 0)).time).toBe(120);
	});

	test('no minute is lost or worked twice', () => {
		const time = fc.record({
			on: fc.integer({ min: 26, max: 30 }),
			from: fc.integer({ min: 0, max: 1439 }),
			long: fc.integer({ min: 1, max: 400 })
		});
		fc.assert(
			fc.property(
				fc.array(time, { maxLength: 6 }),
				fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 8 }),
				(drawn, lengths) => {
					const times = drawn.map(({ on, from, long }) => ({
						day: `2026-11-${on}`,
						from,
						to: Math.min(from + long, 1440)
					}));
					const steps = lengths.map((left, i) => step(String(i), left));
					const { placed, bench, work, slack } = layOut(steps, { due, times }, momentOf(day, 600));
					const pieces = placed.flatMap((one) => one.pieces);
					const worked = pieces.reduce((sum, { from, to }) => sum + to - from, 0);
					const late = placed.reduce((sum, one) => sum + one.late, 0);
					expect(worked + late).toBe(work);
					expect(late).toBe(Math.max(0, -slack));
					pieces.slice(1).forEach(({ from }, i) => {
						expect(from).toBeGreaterThanOrEqual(pieces[i]?.to ?? 0);
					});
					for (const one of pieces) {
						expect(bench.some(({ from, to }) => from <= one.from && one.to <= to)).toBe(true);
					}
				}
			),
			{ numRuns: 60, seed: 8 }
		);
	});
});

describe('the steps of a panel', () => {
	const panel = planPanel({
		panel: { length: 22, width: 14, thickness: '0.032in' },
		members: [{ name: 'frame', runs: 'across', at: 6, flange: '3/4', thickness: '0.040' }],
		rivet: { head: 'universal' },
		greatestPitch: 1
	});

	test('its order of work, with first guesses in fives', async () => {
		const steps = stepsOf(await panel, fresh, slow);
		expect(steps.map(({ id }) => id)).toEqual(
			'blank rows coupon clamp pilot final deburr assemble drive inspect tag'.split(' ')
		);
		expect(steps.every(({ guess }) => guess % 5 === 0 && guess > 0)).toBe(true);
		// 14 − 2 × 5/16 over 1 in: 14 spaces, 15 holes. 10 + 1.3 × 15 = 29.5.
		expect(steps.find(({ id }) => id === 'drive')).toMatchObject({
			name: 'Drive 15 rivets',
			guess: 30,
			left: 30
		});
		expect(steps.filter(({ canWait }) => canWait).map(({ id }) => id)).toEqual(['tag']);
	});

	test('own steps, corrections, ticks on the shop list and time gone by', async () => {
		const own = { id: 'x', name: 'Prime', minutes: 20, after: 'deburr', canWait: false };
		const settings = { ...emptySettings, own: [own], minutes: { final: 7 }, out: ['tag'] };
		const saved = { settings, steps: new Map() };
		const steps = stepsOf(await panel, saved, {
			pace: { factor: 1.5, steps: 3 },
			shares: { pilot: 0.5 },
			spent: new Map([['blank', 30]])
		});
		const at = (id: string) => steps.find((one) => one.id === id);
		expect(steps[steps.findIndex(({ id }) => id === 'deburr') + 1]?.id).toBe('x');
		expect(at('x')).toMatchObject({ minutes: 30, isOwn: true });
		expect(at('final')?.minutes).toBe(7);
		expect(at('pilot')).toMatchObject({ guess: 15, minutes: 23, left: 12 });
		// 25 × 1.5 = 38 less 30.
		expect(at('blank')?.left).toBe(8);
		expect(at('tag')).toMatchObject({ isOut: true, left: 0 });
	});
});

describe('what the log tells', () => {
	const ids = ['7d3f5f3e-6a0e-4c1b-9f0a-0d6b3a4c2e11', '7d3f5f3e-6a0e-4c1b-9f0a-0d6b3a4c2e12'];
	const [panel = '', other = ''] = ids;
	const event = (facts: { readonly type: string } & Readonly<Record<string, unknown>>) => ({
		id: panel,
		v: 1,
		learner: other,
		at: 5,
		day,
		...facts
	});
	const done = (on: string, id: string, guess: number, minutes: number) =>
		event({ type: 'time-step', panel: on, step: id, state: 'done', guess, minutes });

	test('a plan is what was set last, and the last state of each step', () => {
		const events = [
			event({ type: 'time-plan', panel, ...emptySettings, due }),
			event({ type: 'time-step', panel, step: 'rows', state: 'begun' }),
			done(panel, 'rows', 45, 52),
			event({ type: 'time-plan', panel: other, ...emptySettings })
		];
		expect(events.map((one) => knownEvent(one) === undefined)).not.toContain(true);
		const { settings, steps } = timePlanOf(events, panel);
		expect(settings.due).toEqual(due);
		expect(steps.get('rows')).toEqual({ state: 'done', minutes: 52, at: 5 });
	});

	test('the pace is what steps took over what was guessed, of all panels', () => {
		// (30 + 52 + 20) / (25 + 45 + 30)
		const events = [
			done(panel, 'blank', 25, 30),
			done(panel, 'rows', 45, 52),
			done(other, 'drive', 30, 20)
		];
		expect(paceOf(events)).toEqual({ factor: 1.02, steps: 3 });
		const opened = event({ type: 'time-step', panel: other, step: 'drive', state: 'open' });
		expect(paceOf([...events, opened]).factor).toBeCloseTo(82 / 70, 9);
		expect(paceOf([done(panel, 'blank', 5, 500)]).factor).toBe(3);
		expect(paceOf([])).toEqual({ factor: 1, steps: 0 });
	});

	test('a damaged plan is refused', () => {
		const wrong = { ...emptySettings, times: [{ day: 'soon', from: 0, to: 5 }] };
		expect(knownEvent(event({ type: 'time-plan', panel, ...wrong }))).toBeUndefined();
	});
});
