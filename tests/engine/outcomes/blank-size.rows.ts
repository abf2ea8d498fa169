import type { OutcomeRow } from './outcome-row.ts';

/*
 * Both ends of 10 in get 1/2 in, so 1 in is added; one long edge of 4 in gets 1/4 in.
 */

const part = {
	finishedLength: 10,
	finishedWidth: 4,
	trimmedEnds: 2,
	endTrim: 0.5,
	trimmedEdges: 1,
	edgeTrim: 0.25
};

export const rows: readonly OutcomeRow[] = [
	{
		given: part,
		key: 'blankLength',
		entered: 9.5,
		case: 'small',
		says: 'The blank is 1/2 in smaller than the finished part.'
	},
	{
		given: part,
		key: 'blankLength',
		entered: 10,
		case: 'none',
		says: 'Nothing is left to trim: the rough edge is the finished edge.'
	},
	{
		given: part,
		key: 'blankLength',
		entered: 10.5,
		case: 'rough',
		says: 'The blank has 1/2 in to trim off, too little for every side: a side stays rough.'
	},
	{
		given: part,
		key: 'blankLength',
		entered: 11.5,
		case: 'waste',
		says: 'The blank has 1 1/2 in to trim off, more than is needed: the rest is waste.'
	},
	{
		given: part,
		key: 'blankLength',
		entered: 11,
		case: 'wanted',
		says: 'The blank has 1 in to trim off, as wanted.'
	},
	{
		given: part,
		key: 'blankWidth',
		entered: 3.75,
		case: 'small',
		says: 'The blank is 1/4 in smaller than the finished part.'
	},
	{
		given: part,
		key: 'blankWidth',
		entered: 4,
		case: 'none',
		says: 'Nothing is left to trim: the rough edge is the finished edge.'
	},
	{
		given: part,
		key: 'blankWidth',
		entered: 4.125,
		case: 'rough',
		says: 'The blank has 1/8 in to trim off, too little for every side: a side stays rough.'
	},
	{
		given: part,
		key: 'blankWidth',
		entered: 4.5,
		case: 'waste',
		says: 'The blank has 1/2 in to trim off, more than is needed: the rest is waste.'
	},
	// 1/64 in more is within what a rule shows.
	{
		given: part,
		key: 'blankWidth',
		entered: 4.265625,
		case: 'wanted',
		says: 'The blank has 17/64 in to trim off, as wanted.'
	}
];
