import { knowDimensions } from '../units.ts';
import { angle } from './angle.ts';
import { density } from './density.ts';
import type { Kind } from './kind.ts';
import { length } from './length.ts';
import { load } from './load.ts';
import { number } from './number.ts';
import { stress } from './stress.ts';
import { weight } from './weight.ts';
import { word } from './word.ts';

/**
 * The kind that each dimension has when nothing else is said. A kind with a dimension of its own is
 * added here by a line; one of a dimension that stands here needs none.
 */
const plainKinds = [length, angle, weight, density, stress, load, number, word];

knowDimensions(plainKinds.map(({ dimension }) => dimension));

/** The kind of a value in a dimension, by the name that formulas have for it. */
export function plainKind(dimension: string): Kind {
	const kind = plainKinds.find((one) => one.dimension.name === dimension);
	if (!kind) throw new Error(`no kind has the dimension ${dimension}: add it to kinds/all.ts`);
	return kind;
}

/** Every known dimension, for the compiler of formulas. */
export const dimensions = plainKinds.map((kind) => kind.dimension);
