import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { cards } from '../../src/lib/engine/families/topics.ts';
import { collect } from '../../src/lib/engine/sets/collect.ts';
import { composeSet, plainTerms, readWish } from '../../src/lib/engine/sets/compose.ts';
import { openSet } from '../../src/lib/engine/sets/open-set.ts';
import { dueCalendar } from '../../src/lib/exchange/due-date.ts';
import { xapiStatements } from '../../src/lib/exchange/xapi.ts';
import { readICalendar } from '../engine/schedule/read-icalendar.ts';
import { handInOf, rightEntries } from '../engine/sets/hand-ins.ts';
import { statement } from './xapi-statement.ts';

const now = '2026-12-04T16:00:00.000Z';

async function statements(wishes: readonly string[], more: object = {}) {
	const set = await composeSet({ ...plainTerms('Week 6'), ...more }, wishes.map(readWish));
	const open = await openSet(set);
	const timed = await handInOf(open, 'B05');
	const answers = timed.answers.map((one) => ({ ...one, seconds: 41 }));
	const late = { ...(await handInOf(open, 'B06')), answers: [] };
	const handIns = [{ ...timed, answers, at: '2026-12-03T10:00:00.000Z' }, late];
	const found = handIns.map((handIn) => ({ file: handIn.code, handIn }));
	const collected = await collect(open, found);
	return { open, made: xapiStatements(open, collected.handIns, { now }) };
}

describe('statements', () => {
	test.each(['typed', 'options'])(
		'of every family keep to the specification, answers %s',
		async (answers) => {
			const wishes = cards.flatMap(({ code }) => [`${code}1`, `${code}3`]);
			for (let at = 0; at < wishes.length; at += 40) {
				const { made } = await statements(wishes.slice(at, at + 40), { answers });
				for (const one of made) v.parse(statement, JSON.parse(JSON.stringify(one)));
				expect(new Set(made.map(({ id }) => id)).size).toBe(made.length);
			}
		}
	);

	test('tell code, verdict, time and marks; who answered nothing has completed with none', async () => {
		const { open, made } = await statements(['RL2', 'RR3']);
		const [needed, length] = made;
		const [task] = open.tasks;
		if (!task) throw new Error('no task');
		const right = rightEntries(task);
		expect(needed).toMatchObject({
			actor: { account: { name: 'B05' } },
			result: { response: right.needed, success: true, score: { scaled: 1, raw: 3, max: 3 } },
			timestamp: '2026-12-03T10:00:00.000Z'
		});
		expect(length).toMatchObject({
			result: { response: right.length, success: true, score: { scaled: 1, raw: 1, max: 1 } }
		});
		expect(made.filter(({ actor }) => actor.account.name === 'B06')).toMatchObject([
			{ result: { completion: true, score: { scaled: 0, raw: 0 } }, timestamp: now }
		]);
	});

	test('tell the time of a task that has one answer', async () => {
		const { made } = await statements(['BS1']);
		expect(made[0]?.result).toMatchObject({ duration: 'PT41S' });
	});

	test('have the same ids when they are made again', async () => {
		const [one, other] = [await statements(['RL2']), await statements(['RL2'])];
		expect(one.made).toEqual(other.made);
	});
});

describe('the due date', () => {
	const link = 'https://school.example/sets/#2.z.x';
	test.each([
		['2026-12-04', { wholeDay: true, start: '20261204' }],
		['2026-12-04T16:00', { wholeDay: false, start: '20261204T154500', duration: 'PT15M' }],
		['2026-12-04T00:05', { wholeDay: false, start: '20261204T000000' }]
	])('%s is an entry of a calendar', async (due, wanted) => {
		const set = await composeSet({ ...plainTerms('Week 6; B'), due }, [readWish('RL2')]);
		const [entry] = readICalendar(dueCalendar(set, 0, link) ?? '');
		expect(entry).toMatchObject({ summary: 'Due: Week 6; B', description: link, ...wanted });
	});

	test('is none where the set has none', async () => {
		const set = await composeSet(plainTerms('Week 6'), [readWish('RL2')]);
		expect(dueCalendar(set, 0, link)).toBeNull();
	});
});
