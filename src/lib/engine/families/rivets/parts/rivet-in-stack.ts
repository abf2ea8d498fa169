import { stackHeight, stackSection, setRivet } from '../../../figures/parts/joint.ts';
import { widthBeside } from '../../../figures/parts/rivet.ts';
import type { Drawing, Shape } from '../../../figures/drawing.ts';
import { segment } from '../../../figures/drawing.ts';
import type { SeenBy } from '../../family.ts';
import { across, down } from '../../../figures/size.ts';

/** A stack with the centre line of a rivet whose size is not known yet. */
export function stackWithCentreLine(
	layers: readonly number[],
	names: readonly string[],
	like = layers
): Drawing {
	const [width, x] = [across(250), across(125)];
	const scale = down(66) / Math.max(stackHeight(like, 1), 0.05);
	const bottom = stackHeight(layers, scale);
	return {
		title: `Section through ${layers.length} sheets with the centre line of a rivet.`,
		shapes: [
			...stackSection({ layers, names, width, scale }),
			segment(x, -26, x, bottom + 26, 'centre')
		]
	};
}

/** The stack with a rivet of the diameter answered set in it, to the scale of the right one. */
export function rivetInStack(layers: readonly number[], seen: SeenBy): Drawing {
	const [D, wanted] = [seen.at(seen.key), seen.rightAt(seen.key)];
	const stack = stackHeight(layers, 1);
	const scale = Math.min(down(150) / (stack + 2 * wanted), down(40) / wanted);
	const drawn = Math.min(D, 3 * wanted);
	const width = widthBeside(drawn, scale);
	const length = stack + seen.at('shankOut') * (drawn / D);
	const rivet: Shape[] = drawn < 1 / 64 ? [] : setRivet(width / 2, drawn, length, scale);
	return { title: seen.says, shapes: [...stackSection({ layers, width, scale }), ...rivet] };
}
