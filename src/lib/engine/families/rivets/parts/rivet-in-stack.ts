import { stackHeight, stackSection, setRivet } from '../../../figures/parts/joint.ts';
import { widthBeside } from '../../../figures/parts/rivet.ts';
import { type Drawing, type Shape, text } from '../../../figures/drawing.ts';
import type { SeenBy } from '../../family.ts';
import { across, both, down } from '../../../figures/size.ts';

/** A stack with a rivet whose size is not known yet: dashed, and as thick whatever the sheets are. */
export function stackWithUnknownRivet(
	layers: readonly number[],
	names: readonly string[],
	like = layers
): Drawing {
	const [width, x, r] = [across(250), across(125), both(20)];
	const scale = down(52) / Math.max(stackHeight(like, 1), 0.05);
	const end = stackHeight(layers, scale) + 2.4 * r;
	// Set to a scale of its own.
	const rivet = setRivet(x, 2 * r, end, 1).map(dashed);
	return {
		title: `Section through ${layers.length} sheets; the rivet is dashed, for its size is asked.`,
		shapes: [
			...stackSection({ layers, names, width, scale }),
			...rivet,
			text(x, end + 24, 'D ?', { anchor: 'middle' })
		]
	};
}

function dashed(shape: Shape): Shape {
	return shape.kind === 'path' && shape.line === 'edge' ? { ...shape, line: 'hidden' } : shape;
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
