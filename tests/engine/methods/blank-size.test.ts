import { expect, test } from 'vitest';
import { blankSize } from '../../../src/lib/engine/methods/blank-size.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../../src/lib/engine/solver/limits.ts';

const part = { finishedLength: 10, finishedWidth: 4, endTrim: 0.5, edgeTrim: 0.25 };

test.each([
	{ trimmedEnds: 0, trimmedEdges: 0, blankLength: 10, blankWidth: 4 },
	{ trimmedEnds: 1, trimmedEdges: 0, blankLength: 10.5, blankWidth: 4 },
	{ trimmedEnds: 0, trimmedEdges: 1, blankLength: 10, blankWidth: 4.25 },
	{ trimmedEnds: 2, trimmedEdges: 1, blankLength: 11, blankWidth: 4.25 },
	{ trimmedEnds: 1, trimmedEdges: 2, blankLength: 10.5, blankWidth: 4.5 },
	{ trimmedEnds: 2, trimmedEdges: 2, blankLength: 11, blankWidth: 4.5 }
])(
	'$trimmedEnds ends and $trimmedEdges edges trimmed: $blankLength × $blankWidth',
	({ trimmedEnds, trimmedEdges, ...wanted }) => {
		expect(evaluate(blankSize, { ...part, trimmedEnds, trimmedEdges })).toMatchObject(wanted);
	}
);

test.each([
	{ from: 'a curved flange, about 1/4 in (p. 4-77)', trim: 0.25, wanted: [6.5, 3] },
	{ from: 'a form block, 1/2 to 1 in (p. 4-79)', trim: 0.5, wanted: [7, 3.5] },
	{ from: 'a sandbag, at least 1/2 in (p. 4-80)', trim: 1, wanted: [8, 4.5] }
])('rule application, FAA-H-8083-31B ch. 4: trim all round for $from', ({ trim, wanted }) => {
	const values = evaluate(blankSize, {
		finishedLength: 6,
		finishedWidth: 2.5,
		trimmedEnds: 2,
		endTrim: trim,
		trimmedEdges: 2,
		edgeTrim: trim
	});
	expect([values.blankLength, values.blankWidth]).toEqual(wanted);
});

test('cutting the trim off again leaves the finished part', () => {
	for (const trimmedEnds of [0, 1, 2]) {
		const { blankLength } = evaluate(blankSize, { ...part, trimmedEnds, trimmedEdges: 1 });
		let left = Number(blankLength);
		for (let cut = 0; cut < trimmedEnds; cut++) left -= part.endTrim;
		expect(left).toBe(part.finishedLength);
	}
});

test('three ends or three long edges are refused with a sentence', () => {
	const refusal = (trimmedEnds: number, trimmedEdges: number) =>
		brokenLimit(blankSize, evaluate(blankSize, { ...part, trimmedEnds, trimmedEdges }));
	expect(refusal(3, 1)).toContain('two ends');
	expect(refusal(1, 3)).toContain('two long edges');
	expect(refusal(2, 2)).toBeNull();
});
