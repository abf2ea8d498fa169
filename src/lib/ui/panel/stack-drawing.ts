import type { Hole } from '$lib/engine/panel/holes.ts';
import type { Drawing } from '$lib/engine/figures/drawing.ts';
import { setRivet, stackSection } from '$lib/engine/figures/parts/joint.ts';
import type { Writer } from './writer.ts';

const width = 120;

/** The layers of a hole in section, its rivet set and not driven. */
export function stackDrawing(
	{ layers, rivet }: Hole,
	head: 'universal' | 'countersunk',
	write: Writer
): Drawing {
	const scale = Math.min(110 / rivet.length, 34 / rivet.diameter);
	const names = layers.map((one) => write.gauge(one).replace(/ (in|mm)$/, ''));
	return {
		title: `Section through ${layers.length} layers with rivet ${rivet.number}.`,
		shapes: [
			...stackSection({ layers, names, width, scale }),
			...setRivet(width / 2, rivet.diameter, rivet.length, scale, head)
		]
	};
}
