import { source } from '../source.ts';
import { airframe, type Rules } from './rule.ts';

export const rivets = {
	'diameter.three-t': {
		says: 'The rivet is 3T, three times the thicker sheet, and then the next larger size. The handbook also gives 2.5T to 3T as the general range.',
		sources: [airframe('pp. 4-32, 4-33'), source('ac43', 'ch. 4, par. 4-58g(2)(a), p. 4-27')]
	},
	'diameter.range': {
		says: 'As a general range, the rivet is 2.5T to 3T of the thicker sheet; it serves where the next size above 3T is not stocked.',
		sources: [airframe('p. 4-32'), source('none', 'what the bins hold', 'practice')]
	},
	'diameter.least': {
		says: 'A rivet under 3/32 in is never used in a part that carries stress.',
		sources: [airframe('p. 4-32')]
	},
	'length.grip': {
		says: 'The grip is the thickness of everything the rivet passes through.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'length.shank': {
		says: 'The shank stands 1.5D past the grip to form the shop head.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'length.up': {
		says: 'Take the next length up; lengths step by 1/16 in. Half sizes are made too, and marked so: -4.5.',
		sources: [
			source('tm10', 'par. 5-6(2)'),
			source('navedtra14315', 'ch. 3, rivet identification code'),
			source('ac43', 'ch. 4, par. 4-57a(4), p. 4-16, on half sizes')
		]
	},
	'head.wanted': {
		says: 'A shop head of an A, AD, B or DD rivet is 1.5D across and 0.5D high; of a D, E or M rivet 1.4D and 0.6D.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'head.limits': {
		says: 'The shop head of an A, AD, B or DD rivet is 1.25D to 1.66D across and 0.33D to 0.66D high; of a D, E or M rivet 1.25D to 1.5D across and 0.5D to 0.66D high.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'head.judged': {
		says: 'More driving makes a head wider and flatter. One just driven that is too narrow or too high is driven more; one that is too wide or too flat is replaced, and so is every bad rivet of a returned part.',
		sources: [airframe('p. 4-40 and p. 4-44, Fig. 4-97'), source('none', 'driving on', 'practice')]
	},
	'head.universal': {
		says: 'A universal head is 2D across and 0.425D high.',
		sources: [airframe('p. 4-31, Fig. 4-74')]
	},
	'number.code': {
		says: 'A rivet number gives the standard and head, the alloy letters, the diameter in 32nds of an inch, then the length in 16ths.',
		sources: [
			airframe('p. 4-31, Fig. 4-75'),
			source('navedtra14315', 'ch. 3, rivet identification code')
		]
	},
	'number.head': {
		says: 'MS20470 is the universal head, MS20426 the 100° countersunk head; AN470 and AN426 are their older numbers.',
		sources: [
			source('general', 'ch. 7, pp. 7-52 to 7-56'),
			source('ac43', 'ch. 4, par. 4-57a(4), p. 4-16')
		]
	},
	'number.alloy': {
		says: 'The letters name the alloy: A 1100, AD 2117, D 2017, DD 2024, B 5056.',
		sources: [airframe('p. 4-33, Fig. 4-77'), source('general', 'ch. 7, p. 7-56')]
	}
} as const satisfies Rules;
