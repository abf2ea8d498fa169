import type { Tolerance } from '../solver/method.ts';

/*
 * How near an answer must be, from the job it serves. The sizes of tool divisions are printed in
 * FAA-H-8083-30B, ch. 11, pp. 11-19 to 11-23 (steel rule 1/64 in, micrometer 0.001 in); which
 * one a dimension is held to is common practice.
 */

/** A size out of the bin or a count: there is nothing between one and the next. */
export const stockedSize: Tolerance = {
	amount: '0',
	why: 'Stock comes in steps, so the size must be exact.'
};

export const wholeNumber: Tolerance = {
	amount: '0',
	why: 'Pieces are counted, so the number must be exact.'
};

/** The exact name, letters and numbers. */
export const exactWords: Tolerance = { amount: '0', why: 'The name must be exact.' };

export const layoutLine: Tolerance = {
	amount: '1/64',
	why: 'Within 1/64 in, the finest line on a steel rule.'
};

export const thousandths: Tolerance = {
	amount: '0.001',
	why: 'Within 0.001 in, one line of a micrometer.'
};

export const finerThanRule: Tolerance = {
	amount: '0.003',
	why: 'Within 0.003 in, so that several of them still add up to less than 1/64 in.'
};

export const chartFactor: Tolerance = {
	amount: '0.001',
	why: 'Within 0.001, as the chart prints it.'
};

export const weightToHundredth: Tolerance = {
	amount: '0.05',
	why: 'Within 0.05 lb; a shop scale shows no less.'
};
