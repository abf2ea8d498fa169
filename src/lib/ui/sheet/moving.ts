import type { Drawing, Move } from '$lib/engine/figures/drawing.ts';
import { bendingUp } from '$lib/engine/figures/motion.ts';

/** How long a motion takes and how long after the drawing it begins, in milliseconds. */
const [duration, delay] = [900, 400];

const frames = 24;

/** What moves a drawing once more, in the trade's words; empty where nothing of it moves. */
export function replayName(drawing: Drawing): string {
	const names = { driven: 'Drive it again', bent: 'Bend it again', cut: 'Cut it again' };
	const moves = drawing.shapes.flatMap((one) => (one.kind === 'path' && one.move ? one.move : []));
	return moves[0] ? names[moves[0].kind] : '';
}

/** Whether the person wants pages to hold still. */
export function isStill(): boolean {
	return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

/** Moves the metal of a drawing from before to after, once: shank to head, flat to bent, cut by cut. */
export function play(svg: Element, { shapes }: Drawing): void {
	if (isStill()) return;
	shapes.forEach((shape, i) => {
		const path = svg.children[i];
		if (shape.kind === 'path' && shape.move && path instanceof SVGPathElement) {
			moved(path, shape.d, shape.move);
		}
	});
}

function moved(path: SVGPathElement, d: string, move: Move): void {
	switch (move.kind) {
		case 'driven': {
			const [x, y] = move.about;
			path.style.transformOrigin = `${x}px ${y}px`;
			const before = `scale(${move.from[0]}, ${Math.min(move.from[1], 6)})`;
			const easing = 'cubic-bezier(.3, .1, .2, 1)';
			path.animate([{ transform: before }, { transform: 'none' }], {
				duration,
				delay,
				easing,
				fill: 'backwards'
			});
			return;
		}
		case 'cut': {
			const begins = delay + (duration * move.place) / move.of;
			path.animate([{ opacity: 0 }, { opacity: 1 }], {
				duration: 120,
				delay: begins,
				fill: 'backwards'
			});
			return;
		}
		case 'bent':
			bendUp(path, [...bendingUp(move, frames).slice(0, -1), d]);
			return;
		default:
			move satisfies never;
	}
}

function bendUp(path: SVGPathElement, outlines: readonly string[]): void {
	const begins = performance.now() + delay;
	const draw = (now: number) => {
		const part = Math.min(1, Math.max(0, (now - begins) / duration));
		path.setAttribute('d', outlines[Math.round(part * (outlines.length - 1))] ?? '');
		if (part < 1 && path.isConnected) requestAnimationFrame(draw);
	};
	draw(begins);
}
