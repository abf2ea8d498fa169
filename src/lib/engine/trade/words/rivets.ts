import { source } from '../source.ts';
import { practice, word } from './word.ts';

export const rivets = [
	word(
		'rivet',
		'A headed pin that is driven through a hole, so that its other end becomes a second head.',
		'p. 4-30'
	),
	word('grip', 'The thickness of everything that a rivet passes through.', 'p. 4-32, Fig. 4-76'),
	word('stack', 'All layers that one rivet joins, lying on each other.', practice),
	word('layer', 'One sheet or flange of a stack.', practice),
	word(
		'shank',
		'The straight body of a rivet; 1.5D of it stands out to make the shop head.',
		'p. 4-32, Fig. 4-76'
	),
	word('shop head', 'The head that driving makes out of the shank.', 'p. 4-32, Fig. 4-76', [
		'bucktail'
	]),
	word('manufactured head', 'The head that a rivet has when it comes out of the bin.', 'p. 4-30'),
	word(
		'universal head',
		'The common protruding head: 2D across, and a little flat on top.',
		'p. 4-31, Fig. 4-74',
		['universal', 'protruding head', 'protruding', 'universal rivet']
	),
	word(
		'countersunk head',
		'A head that lies flush in a conical hole, 100° on aircraft rivets.',
		'p. 4-31, Fig. 4-74',
		['countersunk', 'flush', 'flush head']
	),
	word(
		'rivet diameter',
		'The thickness of the shank before it is driven, counted in 32nds of an inch: D in the formulas.',
		'p. 4-31',
		['diameter']
	),
	word(
		'dash number',
		'A number behind a dash of a rivet number: first the diameter in 32nds, then the length in 16ths.',
		'p. 4-31, Fig. 4-75',
		['dash']
	),
	word(
		'rivet number',
		'Standard and head, alloy letters, and the two dash numbers: the whole rivet in one line.',
		'p. 4-31, Fig. 4-75'
	),
	word(
		'alloy letters',
		'The letters in a rivet number that name its alloy: A, AD, B, D, DD.',
		'p. 4-33, Fig. 4-77'
	),
	word(
		'3T',
		'Three times the thickness of the thickest sheet: where the choice of a diameter begins.',
		'p. 4-32'
	),
	word(
		'stocked',
		'A size that is on the shelf; lengths step by 1/16 in, diameters by 1/32 in.',
		source('tm10', 'par. 5-6(2)'),
		['stocked size', 'half size', 'next size']
	),
	word(
		'drive',
		'To form the shop head with hammer and bucking bar, or with a squeezer.',
		'p. 4-39',
		['driven', 'driving', 'underdriven', 'overdriven']
	),
	word(
		'bucking bar',
		'The block of steel held against the shank while the rivet is driven.',
		'p. 4-36',
		['buck']
	),
	word('squeezer', 'The tool that presses a rivet instead of hammering it.', 'p. 4-38'),
	word(
		'rework',
		'To put right what is not within its limits; a bad rivet is drilled out and replaced.',
		practice
	)
] as const;
