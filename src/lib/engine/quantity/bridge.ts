/*
 * BRIDGE, to go once methods name their kinds: the names of styles that methods still use, and the
 * kind that each stands for.
 */

import type { LengthUnit, Style, Value } from './kind.ts';
// Makes the dimensions known.
import './kinds/all.ts';
import { angle } from './kinds/angle.ts';
import { choice } from './kinds/choice.ts';
import { count } from './kinds/count.ts';
import { density } from './kinds/density.ts';
import { drill } from './kinds/drill.ts';
import { fraction } from './kinds/fraction.ts';
import type { Kind } from './kinds/kind.ts';
import { length, lengthInFigures } from './kinds/length.ts';
import { listOf } from './kinds/list.ts';
import type { NumberKind } from './kinds/measured.ts';
import { hundredths, number } from './kinds/number.ts';
import { partNumber } from './kinds/part-number.ts';
import { rivetDiameter } from './kinds/rivet-diameter.ts';
import { rivetLength } from './kinds/rivet-length.ts';
import { weight } from './kinds/weight.ts';
import { word } from './kinds/word.ts';
import type { ReadValue } from './reading.ts';

const numberStyles: Readonly<Record<Exclude<Style, 'words'>, NumberKind>> = {
	thousandth: length,
	fraction,
	'rivet-diameter': rivetDiameter,
	'rivet-length': rivetLength,
	drill,
	count,
	factor: number,
	hundredth: hundredths,
	degrees: angle,
	pounds: weight
};

/** What a method says of a given or a step. */
interface Described {
	readonly kind: string;
	readonly style: Style;
	readonly list: boolean;
	readonly oneOf: readonly string[];
	readonly inFigures?: boolean;
	/** Whether it is worked out, and so answered. */
	readonly asked: boolean;
}

/** The kind of a given or a step that a method describes by a style. */
export function kindOf({ kind, style, list, oneOf, inFigures, asked }: Described): Kind {
	if (oneOf.length > 0) return choice(oneOf);
	// Only an answer is a part number; what is given stands as it is.
	if (style === 'words') return asked ? partNumber : word;
	const plain = style === 'factor' && kind === 'density' ? density : numberStyles[style];
	const one = plain === length && inFigures ? lengthInFigures : plain;
	return list ? listOf(one) : one;
}

/** A value in base units as the shop writes it, with its unit. */
export function format(value: Value, style: Style, units: LengthUnit = 'in'): string {
	if (style === 'words' || typeof value === 'string') return String(value);
	const kind = numberStyles[style];
	return typeof value === 'number' ? kind.write(value, units) : kind.writeAll(value, units);
}

/** The number alone, without unit, dash number or drill name, for use inside a formula. */
export function formatNumber(value: number, style: Style, units: LengthUnit = 'in'): string {
	return style === 'words' ? String(value) : numberStyles[style].number(value, units);
}

const lengths = listOf(length);

/** A kind that values, or what answers are read as, of this shape may have. */
export function kindLike(value: Value | ReadValue): Kind {
	if (typeof value === 'string') return word;
	return Array.isArray(value) ? lengths : length;
}
