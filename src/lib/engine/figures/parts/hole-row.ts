import { type Drawing, segment, type Shape, text, widthOf } from '../drawing.ts';
import { dimensionAcross } from './dimension.ts';
import { plate, roundFeature } from './plate.ts';
import { across, down } from '../size.ts';

/** Both ends of a piece with a row of holes, its middle broken out: not to scale. */
export function brokenRow(labels: { margin: string; pitch: string; length: string }): Drawing {
	const [bottom, y] = [down(56), down(28)];
	const first = Math.max(across(72), widthOf(labels.margin) + 8);
	const second = first + Math.max(across(92), widthOf(labels.pitch) + 8);
	const breaks = second + across(40);
	const goesOn = breaks + 20;
	const last = goesOn + across(72);
	const right = last + first;
	return {
		title:
			'A strip from above with a row of holes, its middle broken out; the first and the last hole stand an end margin from the ends.',
		shapes: [
			...plate({ left: 0, top: 0, right: breaks, bottom }, 'metal-a', ['right']),
			...plate({ left: goesOn, top: 0, right, bottom }, 'metal-a', ['left']),
			segment(first, y, last, y, 'centre'),
			...[first, second, last].flatMap((x) => roundFeature(x, y, 7)),
			...dimensionAcross(0, first, bottom + 22, [bottom, y + 8], labels.margin),
			...dimensionAcross(first, second, bottom + 22, y + 8, labels.pitch),
			...dimensionAcross(last, right, bottom + 22, [y + 8, bottom], labels.margin),
			...dimensionAcross(0, right, bottom + 48, bottom, labels.length),
			text(0, -6, 'reference edge', { tone: 'soft' }),
			text(right, -6, 'not to scale', { tone: 'soft', anchor: 'end' })
		]
	};
}

interface Strip {
	readonly length: number;
	readonly endMargin: number;
	/** Hole centres from the left end; one beyond the ends is drawn just past them. */
	readonly holes: readonly number[];
	readonly off: boolean;
}

/** A piece to scale with its holes, and thin lines where the end margins are. */
export function stripWithHoles({ length, endMargin, holes, off }: Strip): Shape[] {
	const [width, bottom] = [across(380), down(40)];
	const scale = width / length;
	const gaps = holes.slice(1).map((at, i) => Math.abs(at - (holes[i] ?? 0)));
	const radius = Math.max(1.5, Math.min(5, (Math.min(...gaps) * scale) / 3));
	const drawnAt = (at: number) => Math.max(-0.08, Math.min(at / length, 1.08)) * width;
	const marks = [endMargin, length - endMargin].map((at) =>
		segment(at * scale, -10, at * scale, bottom + 10, 'thin')
	);
	const line = off ? 'slip' : 'edge';
	return [
		...plate({ left: 0, top: 0, right: width, bottom }),
		...marks,
		...holes.flatMap((at): Shape[] => roundFeature(drawnAt(at), bottom / 2, radius, 'paper', line))
	];
}
