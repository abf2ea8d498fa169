import type { Drawing } from '../../figures/drawing.ts';
import { type BentSheet, metal, scaleToFit, section } from '../../figures/parts/bent.ts';
import { angleFromFlat, legDimension, moldLines, note } from '../../figures/parts/bent-notes.ts';
import { boundsOf } from '../../figures/to-svg.ts';
import { developedWidth } from '../../methods/developed-width.ts';
import type { GivenValues } from '../../solver/method.ts';
import { bendSheets } from '../../trade/nose-bars.ts';
import { bentOutcome, offBy } from './parts/bent-outcome.ts';
import { drawBentPart } from './parts/bent-parts.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';

export const tasks = family({
	method: developedWidth,
	draw(random, level) {
		const { story, names, legs, angles } = drawBentPart(random, level);
		const { alloy, T, bars } = random.pick(bendSheets);
		return {
			given: { R: random.pick(bars), T, legs, angles },
			story,
			question:
				level === 3
					? 'What are the flats, the bend allowances and the developed width?'
					: 'How wide do you cut the blank?',
			asked: level === 3 ? ['flats', 'allowances', 'width'] : ['width'],
			labels: {
				legs: names.map((name) => `${name}, to the mold lines`),
				angles:
					angles.length === 1
						? ['Bend angle, from flat']
						: angles.map((_, i) => `Bend ${i + 1}, from flat`)
			},
			told: [['Material', alloy]],
			basis:
				'Bend allowance by the airframe handbook’s formula with 0.01743 and 0.0078 (FAA-H-8083-31B, ch. 4, p. 4-64).',
			cautions: ['shear', 'bend']
		};
	},
	figure: (given, say) => bentPart(given, say),
	effect: (input, say) => {
		const got = partFrom(input, input.entered);
		const right = partFrom(input, input.right[input.key]);
		return got && right
			? { entered: outcome(input, got, say), right: outcome(input, right, say) }
			: null;
	}
});

/**
 * Which way each bend goes. A part with three legs is drawn as a channel when its flanges are
 * alike and as a Z when they are not; the blank is as wide either way.
 */
function turns(legs: readonly number[], angles: readonly number[]): number[] {
	const zed = legs.length === 3 && legs[0] !== legs[2];
	const ways = legs.length === 5 ? [1, -1, -1, 1] : zed ? [1, -1] : [1, 1, 1, 1];
	return angles.map((angle, i) => angle * (ways[i] ?? 1));
}

/** A channel stands with its web down; other parts start with a level leg. */
function startOf(legs: readonly number[]): number {
	return legs.length === 3 && legs[0] === legs[2] ? -90 : 0;
}

function bentPart({ R, T, legs, angles }: GivenValues<typeof developedWidth>, say: Say): Drawing {
	const bends = turns(legs, angles);
	const start = startOf(legs);
	const setback = (i: number) => Math.tan(((angles[i] ?? 0) * Math.PI) / 360) * (R + T);
	const flats = legs.map((leg, i) => leg - setback(i - 1) - setback(i));
	const sheet: BentSheet = { R, T, flats, bends };
	const part = section(sheet, scaleToFit(sheet, 270, 190, start), start);
	const square = angles.every((angle) => angle === 90);
	const shapes = [
		metal(part),
		...moldLines(part),
		...legs.flatMap((leg, i) => legDimension(part, i, square ? 26 : 66, say('legs', leg))),
		...(square
			? []
			: part.corners.flatMap((corner, i) => angleFromFlat(corner, say('angles', angles[i] ?? 0))))
	];
	const { left, right, bottom } = boundsOf(shapes);
	return {
		title: `Section through a part with ${legs.length} legs and its mold line dimensions.`,
		shapes: [
			...shapes,
			note((left + right) / 2, bottom + 20, `R ${say('R', R)} inside, T ${say('T', T)}`)
		]
	};
}

/** The flats that come of an answer; null for a step that changes nothing by itself. */
function partFrom(
	{ right, key }: EffectInput<typeof developedWidth>,
	answer: EffectInput['entered'] | undefined
): readonly number[] | null {
	const { flats, allowances } = right;
	if (typeof flats !== 'object' || typeof allowances !== 'object') return null;
	const last = flats.length - 1;
	const lastOff = (by: number) => flats.map((flat, i) => (i === last ? flat + by : flat));
	if (key === 'width' && typeof answer === 'number') return lastOff(answer - Number(right.width));
	if (typeof answer !== 'object') return null;
	if (key === 'flats' && answer.length === flats.length) return answer;
	const total = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0);
	return key === 'allowances' && answer.length === allowances.length
		? lastOff(total(answer) - total(allowances))
		: null;
}

function outcome(
	{ given: { R, T, legs, angles }, right }: EffectInput<typeof developedWidth>,
	flats: readonly number[],
	say: Say
): Outcome {
	const wanted = right.flats;
	if (typeof wanted !== 'object') throw new Error('no flats');
	const bends = turns(legs, angles);
	const off = flats.flatMap((flat, i) => {
		const by = offBy(flat - (wanted[i] ?? flat), say);
		const named =
			i === 0 ? 'the first leg' : i === flats.length - 1 ? 'the last leg' : `leg ${i + 1}`;
		return by ? [`${named} comes out ${by}`] : [];
	});
	const says =
		off.length > 0
			? `Bent up, ${off.join(', ')}.`
			: 'Bent up, every leg comes out to its mold lines.';
	return bentOutcome({
		wanted: { R, T, flats: wanted, bends },
		got: { R, T, flats, bends },
		start: startOf(legs),
		says
	});
}
