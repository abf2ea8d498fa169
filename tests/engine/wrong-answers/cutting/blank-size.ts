import { rulesOf, type Typed } from '../rule.ts';
import { bareMillimetres, decimal, fraction, number, off } from '../typed.ts';

interface Given {
	readonly finishedLength: number;
	readonly finishedWidth: number;
	readonly trimmedEnds: number;
	readonly endTrim: number;
	readonly trimmedEdges: number;
	readonly edgeTrim: number;
}

interface Right {
	readonly addedLength: number;
	readonly blankLength: number;
	readonly addedWidth: number;
	readonly blankWidth: number;
}

const { common, rare } = rulesOf<Given, Right>('blank-size');

/** Length and width of the blank in one check, unless both are right. */
const blank = (length: number, width: number, right: Right): Typed | null =>
	off(length, right.blankLength) === null && off(width, right.blankWidth) === null
		? null
		: { blankLength: fraction(length), blankWidth: fraction(width) };

export const rules = [
	common(
		'blankLength',
		'the trim at one end only',
		(given, { blankLength }) => off(given.finishedLength + given.endTrim, blankLength, fraction),
		'oneEnd'
	),
	common(
		'blankLength',
		'the trim at both ends, though one is straight',
		(given, right) => off(given.finishedLength + 2 * given.endTrim, right.blankLength, fraction),
		'bothEnds'
	),
	common(
		'blankLength',
		'no trim at all',
		({ finishedLength }, { blankLength }) => off(finishedLength, blankLength, fraction),
		'noEndTrim'
	),
	common(
		'blankLength',
		'the trim taken off',
		(given, { blankLength }) =>
			off(given.finishedLength - given.trimmedEnds * given.endTrim, blankLength, fraction),
		'endTrimOff'
	),
	rare(
		'blankLength',
		'the trim of one end taken off',
		(given, { blankLength }) => off(given.finishedLength - given.endTrim, blankLength, fraction),
		'endTrimOff+oneEnd'
	),
	common(
		'blankLength',
		'the trim of the edges',
		(given, { blankLength }) =>
			off(given.finishedLength + given.trimmedEnds * given.edgeTrim, blankLength, fraction),
		'edgeTrimOnLength'
	),
	rare('blankLength', 'ends and edges mixed up', (given, { blankLength }) =>
		off(given.finishedLength + given.trimmedEdges * given.edgeTrim, blankLength, fraction)
	),
	common(
		'blankLength',
		'half of the trim at each end',
		(given, { blankLength }) =>
			off(given.finishedLength + (given.trimmedEnds * given.endTrim) / 2, blankLength, fraction),
		'halfEnd',
		({ trimmedEnds }) => (trimmedEnds === 2 ? 'oneEnd' : '')
	),
	rare(
		'blankLength',
		'the trim twice at each end',
		(given, { blankLength }) =>
			off(given.finishedLength + 2 * given.trimmedEnds * given.endTrim, blankLength, fraction),
		'twiceEnd'
	),
	common(
		'blankLength',
		'the width of the part',
		(given, { blankLength }) =>
			off(given.finishedWidth + given.trimmedEdges * given.edgeTrim, blankLength, fraction),
		'other-step:blankWidth'
	),
	common(
		'blankLength',
		'only what is added',
		(_, { addedLength, blankLength }) => off(addedLength, blankLength, fraction),
		'other-step:addedLength'
	),
	rare(
		'blankLength',
		'all four sides added to the length',
		(given, { addedLength, ...right }) =>
			off(
				given.finishedLength + addedLength + given.trimmedEdges * given.edgeTrim,
				right.blankLength,
				fraction
			),
		'allSides'
	),
	rare(
		'blankLength',
		'an inch lost when carrying a fraction',
		(_, { blankLength }) => (Number.isInteger(blankLength) ? null : fraction(blankLength - 1)),
		'inchLost'
	),
	rare('blankLength', 'an eighth out on the tape', (_, { blankLength }) =>
		fraction(blankLength + 1 / 8)
	),
	rare('blankLength', 'reads 5/8 as .58: the fraction as its digits', (given, { blankLength }) =>
		given.finishedLength % 1 === 0.625 ? off(blankLength - 0.045, blankLength, decimal) : null
	),
	rare(
		'blankLength',
		'1/2 in of trim whatever the card says',
		(given, { blankLength }) =>
			off(given.finishedLength + given.trimmedEnds * 0.5, blankLength, fraction),
		'leastAtEnds'
	),
	rare(
		'blankLength',
		'millimetres, typed without the unit',
		(_, { blankLength }) => bareMillimetres(blankLength),
		'unit'
	),
	rare(
		'blankLength',
		'a whole inch is near enough',
		(_, { blankLength }) => off(Math.round(blankLength), blankLength, number),
		'rounding'
	),
	common(
		'blankWidth',
		'the trim at one edge only',
		(given, { blankWidth }) => off(given.finishedWidth + given.edgeTrim, blankWidth, fraction),
		'oneEdge'
	),
	common(
		'blankWidth',
		'the trim at both edges, though one is straight',
		(given, right) => off(given.finishedWidth + 2 * given.edgeTrim, right.blankWidth, fraction),
		'bothEdges'
	),
	common(
		'blankWidth',
		'no trim at all',
		({ finishedWidth }, { blankWidth }) => off(finishedWidth, blankWidth, fraction),
		'noEdgeTrim'
	),
	common(
		'blankWidth',
		'the trim taken off',
		(given, { blankWidth }) =>
			off(given.finishedWidth - given.trimmedEdges * given.edgeTrim, blankWidth, fraction),
		'edgeTrimOff'
	),
	common(
		'blankWidth',
		'the trim of the ends',
		(given, { blankWidth }) =>
			off(given.finishedWidth + given.trimmedEdges * given.endTrim, blankWidth, fraction),
		'endTrimOnWidth'
	),
	common(
		'blankWidth',
		'as many edges as ends',
		(given, { blankWidth }) =>
			off(given.finishedWidth + given.trimmedEnds * given.edgeTrim, blankWidth, fraction),
		'asManyAsEnds',
		({ trimmedEdges }) => (trimmedEdges === 2 ? 'oneEdge' : 'bothEdges')
	),
	rare(
		'blankWidth',
		'what the length takes added to the width',
		(given, right) => off(given.finishedWidth + right.addedLength, right.blankWidth, fraction),
		'lengthTrimOnWidth'
	),
	rare(
		'blankWidth',
		'only what is added',
		(_, { addedWidth, blankWidth }) => off(addedWidth, blankWidth, fraction),
		'other-step:addedWidth'
	),
	rare(
		'blankWidth',
		'half of the trim at each edge',
		(given, { blankWidth }) =>
			off(given.finishedWidth + (given.trimmedEdges * given.edgeTrim) / 2, blankWidth, fraction),
		'halfEdge',
		({ trimmedEdges }) => (trimmedEdges === 2 ? 'oneEdge' : '')
	),
	rare(
		'blankWidth',
		'the length of the blank',
		(_, { blankLength, blankWidth }) => off(blankLength, blankWidth, fraction),
		'other-step:blankLength'
	),
	rare(
		'blankWidth',
		'millimetres, typed without the unit',
		(_, { blankWidth }) => bareMillimetres(blankWidth),
		'unit'
	),
	common(
		'blankLength',
		'one side only, both ways',
		(given, right) =>
			blank(given.finishedLength + given.endTrim, given.finishedWidth + given.edgeTrim, right),
		'oneEnd',
		'oneEdge'
	),
	common(
		'blankLength',
		'both sides, both ways',
		(given, right) =>
			blank(
				given.finishedLength + 2 * given.endTrim,
				given.finishedWidth + 2 * given.edgeTrim,
				right
			),
		'bothEnds',
		'bothEdges'
	),
	common(
		'blankLength',
		'the size of the part, no trim',
		(given, right) => blank(given.finishedLength, given.finishedWidth, right),
		'noEndTrim',
		'noEdgeTrim'
	),
	common(
		'blankLength',
		'the trims taken off',
		(given, right) =>
			blank(
				given.finishedLength - right.addedLength,
				given.finishedWidth - right.addedWidth,
				right
			),
		'endTrimOff',
		'edgeTrimOff'
	),
	common(
		'blankLength',
		'the trims of ends and edges changed places',
		(given, right) =>
			blank(
				given.finishedLength + given.trimmedEnds * given.edgeTrim,
				given.finishedWidth + given.trimmedEdges * given.endTrim,
				right
			),
		'edgeTrimOnLength',
		'endTrimOnWidth'
	),
	common(
		'blankLength',
		'length and width each in the field of the other',
		(_, right) => blank(right.blankWidth, right.blankLength, right),
		'other-step'
	),
	common(
		'blankWidth',
		'length right, no trim on the width',
		(given, right) => blank(right.blankLength, given.finishedWidth, right),
		'noEdgeTrim'
	),
	rare(
		'blankLength',
		'half of the trims, both ways',
		(given, right) =>
			blank(
				given.finishedLength + right.addedLength / 2,
				given.finishedWidth + right.addedWidth / 2,
				right
			),
		'halfEnd',
		'halfEdge',
		({ trimmedEnds }) => (trimmedEnds === 2 ? 'oneEnd' : ''),
		({ trimmedEdges }) => (trimmedEdges === 2 ? 'oneEdge' : '')
	)
];
