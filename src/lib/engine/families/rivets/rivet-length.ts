import type { Drawing } from '../../figures/drawing.ts';
import { dimensionAcross, dimensionDown } from '../../figures/parts/dimension.ts';
import {
	bentOverRivet,
	drivenRivet,
	setRivet,
	stackHeight,
	stackSection
} from '../../figures/parts/joint.ts';
import { rivetLength } from '../../methods/rivet-length.ts';
import { rivetDashes, sheetThicknesses } from '../../trade/stock.ts';
import { finalDrill } from '../../trade/tables/rivet-drills.ts';
import { type Effect, type EffectInput, family, type Outcome, type Say } from '../family.ts';
import { threeLayerJoints, twoLayerJoints } from './parts/joints.ts';

const thin = sheetThicknesses.filter((size) => size >= 0.02 && size <= 0.063);

/** Rivets that go with a sheet, in 32nds: three times the thickness, or one size above. */
function dashesFor(thickest: number): readonly number[] {
	return rivetDashes.filter((dash) => dash >= 96 * thickest - 1e-9).slice(0, 2);
}

export const tasks = family({
	method: rivetLength,
	draw(random, level) {
		const joint = random.pick(level === 1 ? twoLayerJoints : threeLayerJoints);
		const layers = joint.layers.map(() => random.pick(thin));
		return {
			given: { layers, D: random.pick(dashesFor(Math.max(...layers))) / 32 },
			story: joint.story,
			question:
				level === 3
					? 'What is the grip, what length is needed, and which rivet do you take?'
					: 'Which rivet length do you take from the bin?',
			asked: level === 3 ? ['grip', 'needed', 'length'] : ['length'],
			labels: { layers: joint.layers },
			told: [['Head', 'universal']],
			basis: 'Shop head by Fig. 4-76 of the airframe handbook; lengths go up to the next 1/16 in.',
			cautions: ['drive']
		};
	},
	figure: ({ layers, D }, say) => joint(layers, D, say),
	effect: (input, say) => driven(input, say)
});

const width = 250;
const x = width / 2;

function scaleFor(layers: readonly number[], D: number): number {
	return Math.min(170 / (stackHeight(layers, 1) + 2 * D), 50 / D);
}

function joint(layers: readonly number[], D: number, say: Say): Drawing {
	const scale = scaleFor(layers, D);
	const bottom = stackHeight(layers, scale);
	const tip = bottom + 1.5 * D * scale;
	const r = (D * scale) / 2;
	return {
		title: `Section through ${layers.length} layers with a rivet through them, its shank standing out past the last one.`,
		shapes: [
			...stackSection({ layers, names: layers.map((one) => say('layers', one)), width, scale }),
			...setRivet(x, D, tip / scale, scale),
			...dimensionDown(0, bottom, width + 22, width, 'grip'),
			...dimensionDown(bottom, tip, x + r + 24, [x + r, x + r], 'shank for the shop head'),
			...dimensionAcross(x - r, x + r, tip + 24, tip, `D ${say('D', D)}`)
		]
	};
}

function driven(input: EffectInput<typeof rivetLength>, say: Say): Effect | null {
	if (input.key !== 'length' || typeof input.entered !== 'number') return null;
	return {
		entered: withRivet(input, input.entered, say),
		right: withRivet(input, Number(input.right.length), say)
	};
}

/** The joint with a rivet of this length, before driving if there is no metal for a head. */
function withRivet(
	{ given: { layers, D }, right }: EffectInput<typeof rivetLength>,
	length: number,
	say: Say
): Outcome {
	const grip = stackHeight(layers, 1);
	const scale = scaleFor(layers, D);
	const stack = stackSection({ layers, width, scale });
	const drawnLength = Math.min(Math.max(length, 0), grip + 4 * D);
	const out = (length - grip) / D;
	const named = say('length', length);
	const outcome = (says: string, rivet: Drawing['shapes']): Outcome => ({
		drawing: { title: `${named} ${says}`, shapes: [...stack, ...rivet] },
		says: `${named} ${says}`
	});
	if (out <= 0) {
		return outcome('does not even come through the stack.', setRivet(x, D, drawnLength, scale));
	}
	const stands = `stands out ${out.toFixed(2)} D`;
	if (out < 0.5) {
		return outcome(`${stands}, too little for any head.`, setRivet(x, D, drawnLength, scale));
	}
	if (length >= Number(right.needed) + 1 / 16) {
		return outcome(
			`${stands}, a size or more too much: driven, the shank bends over.`,
			bentOverRivet(x, D, grip, Math.min(out, 4) * D, scale)
		);
	}
	const high = headHeight(grip, D, out);
	const enough = length >= Number(right.needed) - 1e-9;
	return outcome(
		enough
			? `${stands}, enough for a full shop head.`
			: `${stands} where 1.5 D is wanted: at full width the head is only ${high.toFixed(2)} D high.`,
		drivenRivet(x, D, grip, { across: 1.5 * D, high: high * D }, scale)
	);
}

/**
 * Height in D of a head driven to 1.5 D across: the metal that stands out first fills the hole,
 * whose size is the final drill's; the rest is the head.
 */
function headHeight(grip: number, D: number, out: number): number {
	const fill = (grip / D) * ((finalDrill.run(D) / D) ** 2 - 1);
	return Math.max(0.05, (out - fill) / 1.5 ** 2);
}
