import { expect, test } from 'vitest';
import { loadCheck } from '../../../src/lib/engine/check/catalogue.ts';
import { checkPart } from '../../../src/lib/engine/check/check.ts';
import { instrumentById } from '../../../src/lib/engine/check/instruments.ts';
import { markOwn } from '../../../src/lib/engine/check/own.ts';
import { evidenceOfCheck } from '../../../src/lib/engine/schedule/check-evidence.ts';
import { type LabCheck, knownEvent, readEvent } from '../../../src/lib/engine/schedule/event.ts';
import { emptyLearning, learningFold } from '../../../src/lib/engine/schedule/learning.ts';

async function shown(measured: string, own: Readonly<Record<string, string>> = {}) {
	const { check, family } = await loadCheck('edge-distance');
	const values = { D: '1/8', head: 'protruding', measured };
	const instrument = instrumentById('caliper') ?? null;
	const found = await checkPart(check, { values, instrument, units: 'in' });
	return evidenceOfCheck(found, await markOwn(family, found, own, 'in'));
}

test('a limit that fails charges the step behind it; one that holds shows nothing', async () => {
	expect(await shown('0.29; 0.249')).toEqual([]);
	expect(await shown('0.29; 0.236')).toEqual([{ skill: 'piece/least-edge', result: 'wrong' }]);
	expect(await shown('0.52')).toEqual([{ skill: 'edge-distance/greatest', result: 'wrong' }]);
});

test('own results show what answers show, and the worse of two counts', async () => {
	expect(await shown('0.29', { greatest: '3/8' })).toEqual([
		{ skill: 'edge-distance/greatest', result: 'wrong', slip: 'pitchForGreatest' }
	]);
	expect(await shown('0.29', { least: '1/4' })).toContainEqual({
		skill: 'piece/least-edge',
		result: 'right'
	});
	expect(await shown('0.236', { least: '1/4' })).toContainEqual({
		skill: 'piece/least-edge',
		result: 'wrong'
	});
});

const event: LabCheck = {
	id: '5a000000-0000-4000-8000-000000000009',
	v: 1,
	learner: '5a000000-0000-4000-8000-000000000001',
	at: 1_790_000_000_000,
	day: '2026-11-26',
	type: 'lab-check',
	method: 'edge-distance',
	part: 'Coupon C-2',
	tool: 'caliper',
	units: 'in',
	values: { D: '1/8', head: 'protruding', measured: '0.236' },
	own: {},
	verdict: 'fails',
	skills: [{ skill: 'edge-distance/least', result: 'wrong' }]
};

test('a check is read from the log, and the plan learns from it without counting a task', () => {
	expect(readEvent(event).ok).toBe(true);
	const read = knownEvent(event);
	if (!read) throw new Error('not read');
	const state = learningFold.apply(emptyLearning(), read);
	// The skill goes by the name it has now.
	expect(Object.keys(state.memories)).toEqual(['piece/least-edge']);
	expect([state.tasks, state.newest, state.days]).toEqual([0, [], {}]);
	expect(readEvent({ ...event, verdict: 'good' }).ok).toBe(false);
	expect(readEvent({ ...event, values: { measured: 'x'.repeat(4001) } }).ok).toBe(false);
});
