import { expect, test } from 'vitest';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import { openSet } from '../../../src/lib/engine/sets/open-set.ts';
import { reviewOf } from '../../../src/lib/engine/sets/review.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import { optionEntry } from '../../../src/lib/engine/sets/chosen-option.ts';
import { answerAt, rightEntries } from './hand-ins.ts';

await loadReader();
const wishes = [readWish('RL2'), readWish('LR2'), readWish('ED1')];
const open = await openSet(await composeSet(plainTerms('Week 6'), wishes));
const [, row] = open.tasks;
if (!row) throw new Error('no row');
const [count = '', pitch = ''] = row.task.drawn.asked;
const labelOf = (key: string) => row.task.method.steps[key]?.label;

test('what is left out, half done or cannot be read is told by its label, right or wrong is not', async () => {
	const none = await reviewOf(open.tasks, []);
	expect(none.map(({ place, entered }) => [place, entered])).toEqual([
		[1, 0],
		[2, 0],
		[3, 0]
	]);
	expect(none[1]?.blank).toEqual([labelOf(count), labelOf(pitch)]);
	const some = [
		answerAt(1, { needed: '98 in', length: '99 in' }),
		answerAt(2, { [count]: ' ', [pitch]: '<b>three</b>' }),
		answerAt(3, open.tasks[2] ? rightEntries(open.tasks[2]) : {})
	];
	const [wrong, half, right] = await reviewOf(open.tasks, some);
	expect(wrong).toEqual({ place: 1, asked: 2, entered: 2, blank: [], unclear: [] });
	expect(half).toMatchObject({ asked: 2, entered: 1, blank: [labelOf(count)] });
	expect(half?.unclear).toEqual([
		{ label: labelOf(pitch), entry: '<b>three</b>', why: expect.stringMatching(/\w/) }
	]);
	expect(right).toMatchObject({ blank: [], unclear: [] });
});

test('an entry with two meanings is told until one is picked', async () => {
	const two = { ...answerAt(1, { length: '-5' }), units: 'mm' as const };
	const [which] = await reviewOf(open.tasks, [answerAt(1, { length: '5' })]);
	const [picked] = await reviewOf(open.tasks, [
		{ ...answerAt(1, { length: '5' }), picked: { length: 0 } }
	]);
	const [dash] = await reviewOf(open.tasks, [two]);
	expect(which?.unclear).toHaveLength(1);
	expect(picked?.unclear).toEqual([]);
	expect(dash?.unclear).toEqual([]);
});

test('a choice is there once it is one of the options', async () => {
	const chosen = await openSet({ ...open.set, answers: 'options' });
	const at = chosen.tasks.findIndex(({ question }) => question !== null);
	const question = chosen.tasks[at]?.question;
	if (!question) throw new Error('no question');
	const rows = async (entry: string) =>
		(await reviewOf(chosen.tasks, [answerAt(at + 1, { [question.key]: entry })]))[at];
	expect(await rows('')).toMatchObject({ asked: 1, entered: 0 });
	expect(await rows(optionEntry(question, 1))).toMatchObject({ entered: 1, unclear: [] });
	expect(await rows('Z')).toMatchObject({ unclear: [{ why: 'None of the options.' }] });
});
