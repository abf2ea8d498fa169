import { describe, expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import { rivetDiameter } from '../../../src/lib/engine/methods/rivet-diameter.ts';
import { runTask, stripTask } from './strip.ts';
import { taskOf, verdictsOn } from './typed-answers.ts';

function told(key: string, text: string): string {
	const verdict = verdictsOn(stripTask, { [key]: text })[key];
	if (verdict?.kind !== 'rework') return verdict?.kind ?? 'none';
	const { cause } = verdict;
	if (cause.kind === 'factor') return `${cause.times} × ${cause.of}`;
	return cause.kind === 'slip' ? cause.slips.join('+') : cause.kind;
}

describe('the factor of a rule for the size', () => {
	test.each([
		['threeT', '3', '3 × thickest'],
		['threeT', '3T', '3 × thickest'],
		// T is the thickest sheet, and no other letter is.
		['threeT', '5 D', 'unknown'],
		['threeT', '7T', 'seven'],
		['half', '1.4', '1.4 × D'],
		['half', '1.4D', '1.4 × D'],
		// A number on a rule is a size.
		['half', '7/5', 'unknown'],
		['fine', '1.2345', 'unknown'],
		['twenty', '20', '20 × D'],
		['more', '21', 'unknown'],
		// Once a size is the size.
		['alike', '1.25', 'accept'],
		['sum', '3', 'unknown'],
		['sum', '1', 'other-step'],
		// Half an inch is no size asked for; the share of one half is no size.
		['sum', '1D', 'other-step'],
		['nothing', '2', 'unknown'],
		// Numbers of things are no sizes.
		['run', '4', 'other-step'],
		['share', '3', 'unknown'],
		['twice', '3', 'unknown'],
		['along', '.05', 'other-step'],
		// What stands on the paper as a size is no factor.
		['sixT', '6', 'other-step'],
		['sixT', '6T', '6 × thickest']
	])('%s %s: %s', (key, text, cause) => {
		expect(told(key, text)).toBe(cause);
	});

	test.each([
		['threeT', '3', '3 is the factor of the rule; multiply it by “Thickest layer”.'],
		['half', '1.4', '1.4D is the rule; multiply by D.']
	])('%s %s is told: %s', (key, text, says) => {
		const verdict = verdictsOn(stripTask, { [key]: text })[key];
		expect(verdict && sayVerdict(stripTask, verdict, key)).toBe(says);
	});
});

test('a letter that stands for no size of the task asks for the size', async () => {
	const task = await taskOf('RD', rivetDiameter, { thickest: 0.04 });
	expect(verdictsOn(task, { diameter: '3 D' }).diameter?.kind).toBe('unread');
	expect(verdictsOn(task, { diameter: '3T' }).diameter).toMatchObject({
		cause: { kind: 'factor', of: 'thickest', times: '3' }
	});
});

describe('the result of another step', () => {
	test.each([
		// The nearest before, or else the first after.
		['two', '.7', 'one'],
		['next', '.7', 'three'],
		['rough', '.7', 'last'],
		['one', '.9', 'two'],
		['run', '4', 'spaces']
	])('%s %s: %s', (key, text, step) => {
		expect(verdictsOn(stripTask, { [key]: text })[key]).toMatchObject({
			cause: { kind: 'other-step', step }
		});
	});

	test('of another kind is only looked for where that is asked too', () => {
		expect(verdictsOn(runTask, { run: '4' }).run).toMatchObject({ cause: { kind: 'unknown' } });
		expect(verdictsOn(runTask, { run: '.7' }).run).toMatchObject({ cause: { step: 'half' } });
	});
});

describe('slips that come to one number', () => {
	test('are offered, three at most, and rounding with two of them', () => {
		expect(verdictsOn(stripTask, { rough: '5/16' }).rough).toMatchObject({
			cause: { kind: 'either', slips: ['ofWidth', 'ofD', 'ofPitch'] }
		});
		expect(told('few', '3/16')).toBe('either');
		expect(verdictsOn(stripTask, { few: '3/16' }).few).toMatchObject({
			cause: { slips: ['fewOfWidth', 'fewOfD'], causes: [{}, {}, { kind: 'rounding' }] }
		});
	});

	test('are found in a list that they leave too short, and which speaks for nothing else', () => {
		const either = { kind: 'rework', cause: { kind: 'either', slips: ['down', 'lessOne'] } };
		expect(verdictsOn(stripTask, { row: '.3, .6333, .9667' }).row).toEqual(either);
		expect(verdictsOn(stripTask, { row: '.1, .2, .3', along: '.15' })).toMatchObject({
			row: { kind: 'unread' },
			along: either
		});
	});

	test('are two where only whole numbers make them alike', () => {
		expect(verdictsOn(stripTask, { spaces: '3' }).spaces).toMatchObject({
			cause: { kind: 'either', slips: ['down', 'lessOne'] }
		});
	});

	test('are one act where they do so with other sizes too', () => {
		expect(verdictsOn(stripTask, { left: '.05' }).left).toMatchObject({
			cause: { kind: 'either', slips: ['oneLeftOut', 'byWidth'] }
		});
	});
});
