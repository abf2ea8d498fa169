import { describe, expect, test } from 'vitest';
import { readEvent } from '../../../src/lib/engine/schedule/event.ts';
import { composeSet, plainTerms } from '../../../src/lib/engine/sets/compose.ts';
import { setHash } from '../../../src/lib/engine/sets/set.ts';
import { isSetEvent, nextVersion, shelfOf } from '../../../src/lib/engine/sets/shelf.ts';
import { writeSet } from '../../../src/lib/exchange/set-link.ts';
import { type FactsOf, stamped } from '../../../src/lib/storage/stamp.ts';
import { attempt, sam } from '../../storage/event-arbitrary.ts';

const set = await composeSet(plainTerms('Week 6'), [{ code: 'RL', level: 2, count: 2 }]);
const hash = setHash(set);
const link = await writeSet(set);

let clock = 1_000;
function now(): Date {
	return new Date((clock += 1_000));
}

const saved = () => stamped(sam, { type: 'set', hash, set }, now());
const shelved = (to: 'list' | 'archive' | 'bin') =>
	stamped(sam, { type: 'set-shelf', hash, to }, now());
const drawn = (code: string | null, draws: string) =>
	stamped(sam, { type: 'set-drawn', hash, code, draws }, now());
const taken = (code: string) => stamped(sam, { type: 'set-taken', hash, code, link }, now());
const answered = (code: string, place: number, length: string, seconds = 30) => {
	const facts: FactsOf<'set-answer'> = {
		units: 'in',
		picked: {},
		opened: [],
		charts: [],
		type: 'set-answer',
		hash,
		code,
		place,
		entries: { length },
		seconds
	};
	return stamped(sam, facts, now());
};
const handedIn = (code: string, version: number) => {
	const facts = { type: 'set-handed-in', hash, code, version, name: '', promised: true } as const;
	return stamped(sam, facts, now());
};

describe('what the log tells of sets', () => {
	test('every event about sets can be kept, and is known as one', () => {
		const events = [
			saved(),
			shelved('bin'),
			drawn(null, '2.z.eJyL'),
			drawn('B05', '2.z.eJyL'),
			taken('B05'),
			answered('B05', 1, '<b>'),
			handedIn('B05', 1)
		];
		for (const event of events) {
			expect(readEvent(JSON.parse(JSON.stringify(event)))).toEqual({ ok: true, event });
			expect(isSetEvent(event)).toBe(true);
		}
		expect(isSetEvent(attempt())).toBe(false);
		expect(readEvent({ ...taken('B05'), link: 'javascript:alert(1)' }).ok).toBe(false);
	});

	test('what its tasks drew is there in the order it was kept', () => {
		const { drawn: all } = shelfOf([drawn(null, '2.z.a'), saved(), drawn('B05', '2.z.b')]);
		const sheets = [
			{ code: null, draws: '2.z.a' },
			{ code: 'B05', draws: '2.z.b' }
		];
		expect([...all]).toEqual([[hash, sheets]]);
	});

	test('a saved set is there once, as it was, and stands where it was put last', () => {
		const first = saved();
		const twice = shelfOf([first, shelved('archive'), saved()]);
		expect(twice.saved).toMatchObject([{ hash, set, on: 'list' }]);
		expect(shelfOf([first, shelved('archive')]).saved[0]?.on).toBe('archive');
		expect(shelfOf([shelved('bin'), attempt()]).saved).toEqual([]);
		const unreadable = { ...first, set: { title: 'of a later version' } };
		expect(shelfOf([unreadable]).saved).toEqual([]);
	});

	test('work on a set goes by code, the newest entry of each place counts', () => {
		const { taken: sets } = shelfOf([
			answered('B05', 1, 'before it was taken up'),
			taken('B05'),
			taken('B06'),
			answered('B05', 2, '3/8'),
			answered('B05', 1, '1/4'),
			answered('B06', 1, '1/2'),
			answered('B05', 1, '5/16', 50)
		]);
		expect(sets.map(({ code }) => code)).toEqual(['B06', 'B05']);
		const own = sets.find(({ code }) => code === 'B05');
		expect(own?.answers.map(({ place, entries }) => [place, entries.length])).toEqual([
			[1, '5/16'],
			[2, '3/8']
		]);
		expect(own?.answers[0]?.seconds).toBe(50);
	});

	test('a version handed in keeps what was entered until then', () => {
		const events = [taken('B05'), answered('B05', 1, '1/4'), handedIn('B05', 1)];
		const [once] = shelfOf(events).taken;
		const [again] = shelfOf([
			...events,
			answered('B05', 1, '5/16'),
			handedIn('B05', 2),
			taken('B05')
		]).taken;
		expect(once && nextVersion(once)).toBe(2);
		expect(again && nextVersion(again)).toBe(3);
		expect(again?.handedIn.map(({ answers }) => answers[0]?.entries.length)).toEqual([
			'1/4',
			'5/16'
		]);
	});
});
