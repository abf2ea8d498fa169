import { expect, test } from 'vitest';
import { fixesFor } from '../../../src/lib/engine/panel/fixes.ts';
import { planPanel } from '../../../src/lib/engine/panel/plan.ts';

const member = { runs: 'across', flange: '3/4in', thickness: '0.040in' };
const file = (members: object[], more: object = {}) => ({
	panel: { length: '22in', width: '14in', thickness: '0.032in' },
	members,
	rivet: { head: 'universal' },
	greatestPitch: '1in',
	...more
});
const always = () => Promise.resolve(true);

async function fixed(raw: object, what: string, goOn = always) {
	const plan = await planPanel(raw);
	const check = plan.checks.find((one) => one.what === what && one.verdict !== 'holds');
	if (!check) throw new Error(`nothing is wrong with ${what}`);
	const fixes = await fixesFor(raw, plan, check, goOn);
	return fixes.map(({ field, text, says }) => ({ field, text, says }));
}

test('a frame too near the edge is set in by as little as will do', async () => {
	// D 1/8: least edge distance 1/4, and 1/64 more to be sure of it with a scale. At 3/16, 1/16 more
	// is just 1/4, which a scale cannot tell; 1/8 more is 5/16.
	const raw = file([{ ...member, name: 'Frame A', at: '3/16in' }]);
	expect(await fixed(raw, 'panel edge')).toEqual([
		{ field: 'members.0.at', text: '5/16 in', says: 'Set Frame A 1/8 in to the right' }
	]);
});

test('pitches over 10 D are closed up', async () => {
	const raw = file([{ ...member, name: 'Frame A', at: 6 }], { greatestPitch: '1 1/2in' });
	// 10 × 1/8 = 1 1/4; 13 3/8 over 1 7/16 is 9.3, so 10 spaces of 1.3375; over 1 5/16 11 of 1.216.
	expect(await fixed(raw, 'pitch')).toEqual([
		{
			field: 'greatestPitch',
			text: '1 5/16 in',
			says: 'Space the rivets at most 1 5/16 in apart'
		}
	]);
});

test('a narrow flange gets a wider one, a row too near its end another margin', async () => {
	const narrow = file([{ ...member, name: 'Frame A', at: 6, flange: '7/16in' }]);
	expect(await fixed(narrow, 'flange edge')).toContainEqual({
		field: 'members.0.flange',
		text: '9/16 in',
		says: 'Give Frame A a flange of 9/16 in'
	});
	const near = file([{ ...member, name: 'Frame A', at: 6 }], { endMargin: '3/16in' });
	expect(await fixed(near, 'panel edge')).toContainEqual({
		field: 'endMargin',
		text: '5/16 in',
		says: 'Begin the rows 5/16 in from their ends'
	});
});

test('a search can be called off', async () => {
	const short = file([{ ...member, name: 'Frame A', at: 6, from: '1/8in' }], {
		endMargin: '1/4in'
	});
	expect((await fixed(short, 'flange edge'))[0]).toEqual({
		field: 'endMargin',
		text: '5/16 in',
		says: 'Begin the rows 5/16 in from their ends'
	});
	expect(await fixed(short, 'flange edge', () => Promise.resolve(false))).toEqual([]);
});
