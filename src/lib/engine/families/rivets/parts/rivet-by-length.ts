import type { Drawing, Shape } from '../../../figures/drawing.ts';
import {
	bentOverRivet,
	drivenRivet,
	setRivet,
	stackHeight,
	stackSection
} from '../../../figures/parts/joint.ts';
import { widthBeside } from '../../../figures/parts/rivet.ts';
import type { SeenBy } from '../../family.ts';
import { down } from '../../../figures/size.ts';

export function scaleFor(layers: readonly number[], D: number): number {
	return Math.min(down(170) / (stackHeight(layers, 1) + 2 * D), down(50) / D);
}

/** The joint with a rivet of the length answered, before driving if there is no metal for a head. */
export function rivetByLength(layers: readonly number[], D: number, seen: SeenBy): Drawing {
	const grip = stackHeight(layers, 1);
	const scale = scaleFor(layers, D);
	const width = widthBeside(D, scale);
	const stack = stackSection({ layers, width, scale });
	return { title: seen.says, shapes: [...stack, ...rivetIn(seen, D, grip, scale, width / 2)] };
}

function rivetIn(seen: SeenBy, D: number, grip: number, scale: number, x: number): Shape[] {
	switch (seen.case) {
		case 'inside':
		case 'stub':
			return setRivet(x, D, Math.min(Math.max(seen.at('entered'), 0), grip + 4 * D), scale);
		case 'bends':
			return bentOverRivet(x, D, grip, Math.min(seen.at('out'), 4) * D, scale);
		default:
			return drivenRivet(
				x,
				D,
				grip,
				{ across: seen.at('headAcross'), high: seen.at('headHigh') },
				scale
			);
	}
}
