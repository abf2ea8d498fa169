import { source } from '../source.ts';
import { practice, word } from './word.ts';

export const layout = [
	word(
		'edge distance',
		'From the centre of a hole to the nearest edge of its sheet.',
		'pp. 4-33, 4-34'
	),
	word(
		'pitch',
		'From the centre of one rivet to the centre of the next in the same row.',
		'p. 4-34',
		['rivet spacing', 'rivet pitch']
	),
	word(
		'transverse pitch',
		'From one row of rivets to the next, at right angles to the rows.',
		'p. 4-34, Fig. 4-81',
		['row to row', 'rows apart']
	),
	word(
		'end margin',
		'From an end of the piece to the centre of the first hole of its row.',
		practice
	),
	word('row', 'Rivets on one straight line.', 'p. 4-34'),
	word(
		'space',
		'The distance between two neighbouring rivets of a row: one fewer than there are rivets.',
		practice
	),
	word('lap', 'Where one sheet lies over another and is riveted to it.', 'p. 4-93', [
		'lap seam',
		'seam',
		'lap joint'
	]),
	word('reference edge', 'The edge that every dimension of a layout is measured from.', practice),
	word(
		'break',
		'The line along which a sheet is torn or cracked; rivets bridge it on both sides.',
		'p. 4-86'
	),
	word('patch', 'A piece of sheet riveted over a hole or a crack.', 'p. 4-93', [
		'doubler',
		'splice',
		'butt strap'
	]),
	word(
		'pilot hole',
		'A first, smaller hole that starts straight and is opened to size later.',
		'p. 4-39, Fig. 4-90',
		['pilot', 'pilot drill']
	),
	word(
		'final drill',
		'The drill that leaves the hole a few thousandths over the shank.',
		'p. 4-39, Fig. 4-90',
		['final', 'final hole', 'final size']
	),
	word(
		'clearance',
		'How much wider the hole is than the shank before the rivet is driven.',
		'p. 4-39'
	),
	word(
		'number drill',
		'A drill whose size goes by a number from 1 to 80: the higher, the thinner.',
		'p. 4-18, Fig. 4-47',
		['letter drill', 'fraction drill']
	),
	word(
		'ream',
		'To bring a hole to its exact size with a fluted tool.',
		source('ac43', 'ch. 4, par. 4-57b'),
		['reamed']
	)
] as const;
