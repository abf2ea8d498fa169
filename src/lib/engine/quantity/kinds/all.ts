import { knowDimensions } from '../units.ts';
import { angle } from './angle.ts';
import { density } from './density.ts';
import { length } from './length.ts';
import { load } from './load.ts';
import { number } from './number.ts';
import { stress } from './stress.ts';
import { weight } from './weight.ts';
import { word } from './word.ts';

/**
 * The kind that each dimension has when nothing else is said (plain.ts). A kind with a dimension of
 * its own is added here by a line, in a file of its id; one of a dimension that stands here needs none.
 */
export const plainKinds = [length, angle, weight, density, stress, load, number, word];

knowDimensions(plainKinds.map(({ dimension }) => dimension));

/** Every known dimension, for the compiler of formulas. */
export const dimensions = plainKinds.map((kind) => kind.dimension);
