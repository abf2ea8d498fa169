import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	compareEvents,
	knownEvent,
	maxEventLength,
	readEvent
} from '../../../src/lib/engine/schedule/event.ts';
import { noteVerdicts } from '../../../src/lib/engine/schedule/note-verdicts.ts';
import type { Verdicts } from '../../../src/lib/engine/marking/verdict.ts';
import { attempt, events, kit, sam } from '../../storage/event-arbitrary.ts';

const good = attempt();
const stamp = { id: good.id, v: 1, learner: sam, at: 5, day: '2026-03-09' };
const setting = { ...stamp, type: 'setting', key: 'exam', value: '2026-06-01' };
const naming = { ...stamp, type: 'learner', nickname: 'Sam' };
const later = { ...stamp, type: 'hand-in', of: ['a', 1, null, { deep: true }] };

describe('an event that can be kept', () => {
	test.each([
		['an attempt', good],
		['an attempt without a level', without(good, 'level')],
		['the working asked for', attempt({ typed: {}, verdicts: {}, worked: true })],
		[
			'a cause added later',
			attempt({ verdicts: { x: { kind: 'rework', cause: 'new', slips: [] } } })
		],
		['an attempt with charts', attempt({ charts: ['k-chart', 'densities'] })],
		['a field added later', { ...good, hint: { shown: 2 } }],
		['an entry of 300 characters', attempt({ typed: { length: 'x'.repeat(300) } })],
		['a setting', setting],
		['a setting that is a list', { ...setting, value: [0, 6, { dates: [] }] }],
		['a setting taken back', { ...setting, value: null }],
		['a naming', naming],
		['a type added later', later]
	])('%s is read unchanged', (_name, raw) => {
		const before = structuredClone(raw);
		expect(readEvent(raw)).toEqual({ ok: true, event: before });
	});

	test('every generated one is read, also after a trip through text', () => {
		fc.assert(
			fc.property(events(fc.constantFrom(sam, kit)), (list) => {
				for (const event of list) {
					expect(readEvent(event)).toEqual({ ok: true, event });
					expect(readEvent(JSON.parse(JSON.stringify(event)))).toEqual({ ok: true, event });
				}
			})
		);
	});
});

const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);

describe('an event that is refused', () => {
	test.each<[string, unknown]>([
		['nothing', undefined],
		['a text', 'attempt'],
		['a list', [good]],
		['no id', without(good, 'id')],
		['an id that is no UUID', { ...good, id: '1' }],
		['no learner', without(good, 'learner')],
		['no version', without(good, 'v')],
		['version 0', { ...good, v: 0 }],
		['a time with a fraction', { ...good, at: 1.5 }],
		['a time before 1970', { ...good, at: -1 }],
		['a day that is none', { ...good, day: '2026-13-01' }],
		['a day with a time', { ...good, day: '2026-03-09T10:00' }],
		['a type with no name', { ...good, type: '' }],
		['an attempt without verdicts', without(good, 'verdicts')],
		['an attempt without skills', without(good, 'skills')],
		['a level 4', { ...good, level: 4 }],
		['an entry too long', attempt({ typed: { length: 'x'.repeat(301) } })],
		['an entry that is a number', { ...good, typed: { length: 5 } }],
		['too many entries', attempt({ typed: manyEntries(61) })],
		['negative seconds', attempt({ seconds: -1 })],
		['endless seconds', attempt({ seconds: Infinity })],
		['a told slip without a skill', { ...good, told: [{ slip: 'oneLayer' }] }],
		['seconds over a day', attempt({ seconds: 86_401 })],
		['a skill without a step', attempt({ skills: [{ skill: 'shank', result: 'right' }] })],
		['a result that is none', { ...good, skills: [{ skill: 'a/b', result: 'good' }] }],
		['a verdict that is none', { ...good, verdicts: { x: { kind: 'maybe' } } }],
		['a setting without a value', without(setting, 'value')],
		['a setting that is no plain data', { ...setting, value: new Date(0) }],
		['a setting that nests too deep', { ...setting, value: nested(8) }],
		['a naming without a nickname', { ...naming, nickname: '' }],
		['a later type that is too large', { ...later, of: 'x'.repeat(maxEventLength) }],
		['a later type that nests without end', { ...later, of: nested(5_000) }],
		['a later type with a function', { ...later, of: () => 1 }]
	])('%s', (_name, raw) => {
		expect(readEvent(raw)).toEqual({ ok: false, reason: 'broken' });
	});

	test.each([2, 9])('version %i, as newer', (v) => {
		expect(readEvent({ ...good, v })).toEqual({ ok: false, reason: 'newer' });
		expect(readEvent({ ...good, v, at: 'noon' })).toEqual({ ok: false, reason: 'newer' });
	});

	test('nothing at all makes reading throw', () => {
		fc.assert(
			fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true }), (raw) => {
				expect(readEvent(raw).ok).toBe(false);
			})
		);
	});
});

test('slips that were told are kept, under the names they go by now', () => {
	const told = [{ skill: 'developed-width/K', slip: 'legsAngle' }];
	expect(knownEvent({ ...good, told })).toMatchObject({
		told: [{ skill: 'piece/setback-k', slip: 'legs' }]
	});
	expect(knownEvent(good)).not.toHaveProperty('told');
});

test('known events are told by type, others are not seen', () => {
	expect([good, setting, naming].map((event) => knownEvent(event)?.type)).toEqual([
		'attempt',
		'setting',
		'learner'
	]);
	expect(knownEvent(later)).toBeUndefined();
	expect(knownEvent({ ...later, type: 'toString' })).toBeUndefined();
	expect(knownEvent({ ...good, seconds: 'long' })).toBeUndefined();
	expect(knownEvent(null)).toBeUndefined();
});

test('the order is by time, then by id, and does not hang on the order of arrival', () => {
	fc.assert(
		fc.property(events(fc.constant(sam), fc.nat({ max: 3 })), (list) => {
			const sorted = [...list].sort(compareEvents);
			expect([...list].reverse().sort(compareEvents)).toEqual(sorted);
			const keys = sorted.map(({ at, id }) => `${at} ${id}`);
			expect(keys).toEqual([...keys].sort());
		})
	);
});

test('verdicts are kept with cause and slips', () => {
	const rework = (cause: unknown) => ({ kind: 'rework', cause });
	const verdicts = {
		grip: { kind: 'accept', carried: true },
		shank: rework({ kind: 'slip', slips: ['halfD'], also: 'mm-for-inch' }),
		needed: rework({ kind: 'either', slips: ['noShank', 'oneLayer'] }),
		length: rework({ kind: 'rounding', how: 'cut' }),
		number: rework({ kind: 'unknown' })
	} as Verdicts;
	const kept = noteVerdicts(verdicts);
	expect(kept).toEqual({
		grip: { kind: 'accept', carried: true },
		shank: { kind: 'rework', cause: 'slip', slips: ['halfD'] },
		needed: { kind: 'rework', cause: 'either', slips: ['noShank', 'oneLayer'] },
		length: { kind: 'rework', cause: 'rounding', slips: [] },
		number: { kind: 'rework', cause: 'unknown', slips: [] }
	});
	expect(readEvent(attempt({ verdicts: kept })).ok).toBe(true);
});

function without<T extends object>(event: T, key: keyof T): unknown {
	return Object.fromEntries(Object.entries(event).filter(([name]) => name !== key));
}

function manyEntries(number: number): Record<string, string> {
	return Object.fromEntries(Array.from({ length: number }, (_, i) => [`s${i}`, '1']));
}
