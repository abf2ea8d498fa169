import { practice, word } from './word.ts';

export const bends = [
	word(
		'setback',
		'How far before the mold line a bend begins: from the bend tangent line to the mold line.',
		'p. 4-59'
	),
	word(
		'mold line',
		'The outside face of a leg carried on past the bend, as if the corner were sharp.',
		'p. 4-59, Fig. 4-120',
		['mold point']
	),
	word(
		'mold line dimension',
		'The length of a leg from its edge, or from one mold line to the next: what the drawing gives.',
		'p. 4-59',
		['MLD']
	),
	word('bend tangent line', 'The line where the flat ends and the bend begins.', 'p. 4-59', [
		'tangent line'
	]),
	word(
		'bend allowance',
		'The metal that a bend takes, from one tangent line to the other, measured along the neutral line.',
		'pp. 4-59, 4-64',
		['BA']
	),
	word(
		'neutral line',
		'The line inside the metal that is neither stretched nor squeezed by the bend, about 0.445T from the inside face.',
		'p. 4-63'
	),
	word(
		'bend angle',
		'How far the metal is bent from flat: 180° less the angle between the legs.',
		'pp. 4-64, 4-66'
	),
	word(
		'flat',
		'A part of the blank that stays straight: its mold line dimension less a setback at each bent end.',
		'p. 4-59'
	),
	word(
		'leg',
		'A straight side of a bent part; the shorter one is often called its flange.',
		'p. 4-59'
	),
	word('flange', 'The narrow side of a bent part, turned up along an edge.', 'p. 4-59'),
	word(
		'developed width',
		'How wide the flat blank of a bent part is: its flats and its bend allowances added up.',
		'pp. 4-59, 4-66'
	),
	word(
		'sight line',
		'The line you set right below the nose of the brake: one radius into the bend from the tangent line.',
		'pp. 4-59, 4-66',
		['brake line']
	),
	word(
		'inside radius',
		'The radius of a bend on its inside face, made by the nose bar.',
		'p. 4-59',
		['bend radius', 'inside bend radius', 'minimum radius', 'minimum bend radius']
	),
	word(
		'K',
		'The factor of the setback: the tangent of half the bend angle, 1 for a square bend.',
		'pp. 4-59, 4-60'
	),
	word(
		'nose bar',
		'The rounded bar of a brake that the sheet is bent round; its radius is the inside radius.',
		'pp. 4-68, 4-69',
		['nose', 'nose of the brake']
	),
	word('brake', 'The machine that clamps a sheet and bends it along a straight line.', 'p. 4-68', [
		'cornice brake'
	]),
	word('thickness', 'How thick one sheet is, bare or clad: T in the formulas.', practice, [
		'gauge'
	]),
	word('temper', 'How hard an alloy was made: O is soft, T3 and T6 are heat treated.', practice),
	word(
		'grain',
		'The direction in which a sheet was rolled; bend lines run across it where they can.',
		'p. 4-58'
	),
	word('square bend', 'A bend of 90°.', practice, ['square'])
] as const;
