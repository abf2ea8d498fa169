import type { Tolerance } from '../solver/method.ts';

/*
 * How near an answer must be, from the job it serves. The sizes of tool divisions are printed in
 * FAA-H-8083-30B, ch. 11, pp. 11-19 to 11-23 (steel rule 1/64 in, micrometer 0.001 in); which
 * one a dimension is held to is common practice.
 */

/** A size out of the bin: there is nothing between one and the next. */
export const stockedSize: Tolerance = {
	amount: '0.001',
	why: 'Stock comes in steps, so the size must be exact to the thousandth.',
	metric: {
		millimetres: '0.1',
		why: 'Stock comes in steps; in millimetres the size counts to 0.1 mm.'
	}
};

export const wholeNumber: Tolerance = {
	amount: '0',
	why: 'Pieces are counted, so the number must be exact.'
};

/** The exact name, letters and numbers. */
export const exactWords: Tolerance = { amount: '0', why: 'It must be exact.' };

export const layoutLine: Tolerance = {
	amount: '1/64',
	why: 'Within 1/64 in: a steel rule reads no finer.',
	tool: 'rule',
	metric: { millimetres: '0.5', why: 'Within 0.5 mm: a metric steel rule reads no finer.' }
};

/** Half a division either way. */
export const drilledDepth: Tolerance = {
	amount: '1/128',
	why: 'To the nearest 1/64 in, as a depth is set with a scale.',
	metric: {
		millimetres: '0.25',
		why: 'To the nearest 0.5 mm, as a depth is set with a metric scale.'
	}
};

export const aboutThirds: Tolerance = {
	amount: '1/64',
	why: 'About two thirds, so to the nearest 1/32 in.',
	metric: { millimetres: '0.5', why: 'About two thirds, so to the nearest millimetre.' }
};

export const thousandths: Tolerance = {
	amount: '0.001',
	why: 'Within 0.001 in, one line of a micrometer.',
	tool: 'micrometer',
	metric: { millimetres: '0.03', why: 'Within 0.03 mm: a vernier caliper reads 0.02 mm.' }
};

/** The same where a metric shop reads it off a scale, as an edge distance, or off a plain caliper, as a head. */
export const onMetricScale: Tolerance = {
	...thousandths,
	metric: { millimetres: '0.1', why: 'Within 0.1 mm: 8 mm stands for 5/16 in.' }
};

export const finerThanRule: Tolerance = {
	amount: '0.003',
	why: 'Within 0.003 in, so that several of them still add up to less than 1/64 in.',
	metric: {
		millimetres: '0.08',
		why: 'Within 0.08 mm, so that several of them still add up to less than 0.5 mm.'
	}
};

/** A number that stands in a name. */
export const exactNumber: Tolerance = { amount: '0', why: 'The number must be exact.' };

/** A value that is looked up and not computed. */
export const fromTable: Tolerance = {
	amount: '0',
	why: 'It is read off a table, so it must be exact.'
};

export const steppedOff: Tolerance = {
	amount: '0.001',
	why: 'Within 0.001 in: the error of a pitch adds up at every hole that is stepped off.',
	metric: {
		millimetres: '0.03',
		why: 'Within 0.03 mm: the error of a pitch adds up at every hole that is stepped off.'
	}
};

export const chartFactor: Tolerance = {
	amount: '0.001',
	why: 'Within 0.001, as the chart prints it.'
};

export const chartRadius: Tolerance = {
	amount: '0.005',
	why: 'Within 0.005 in, as the chart prints two places; the 32nd it stands for counts too.'
};

export const halfDegree: Tolerance = {
	amount: '0.5',
	why: 'Within half a degree, as a protractor reads.'
};

export const weightToHundredth: Tolerance = {
	amount: '0.05',
	why: 'Within 0.05 lb: a shop scale reads no finer.'
};

export const drillSizes: Tolerance = {
	amount: '0.0005',
	why: 'Within 0.0005 in: number and letter drills are farther apart than that.',
	metric: { millimetres: '0.05', why: 'Within 0.05 mm: metric drills step by 0.1 mm.' }
};

export const clearanceOfHole: Tolerance = {
	amount: '0.0005',
	why: 'Within 0.0005 in: the whole clearance is only a few thousandths.',
	metric: { millimetres: '0.02', why: 'Within 0.02 mm: the whole clearance is under 0.2 mm.' }
};
