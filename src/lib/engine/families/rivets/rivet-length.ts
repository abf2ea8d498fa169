import { type Drawing, rectangle } from '../../figures/drawing.ts';
import { dimensionAcross, dimensionDown } from '../../figures/parts/dimension.ts';
import { drivenRivet, setRivet, stackHeight, stackSection } from '../../figures/parts/joint.ts';
import { rivetLength } from '../../methods/rivet-length.ts';
import { finalDrill } from '../../trade/rivet-drills.ts';
import { sheetThicknesses } from '../../trade/stock.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';

interface Joint {
	readonly names: readonly string[];
	readonly story: string;
}

const twoLayers: readonly Joint[] = [
	{ names: ['Skin', 'Rib flange'], story: 'The skin of a training flap goes onto its rib flanges.' },
	{ names: ['Skin', 'Stiffener'], story: 'A stiffener is riveted across a panel that used to drum in flight.' },
	{ names: ['Access plate', 'Frame'], story: 'The old access plate is off; a new one goes onto the frame.' }
];

const threeLayers: readonly Joint[] = [
	{ names: ['Skin', 'Doubler', 'Frame'], story: 'A doubler goes between the skin and a frame at the edge of the baggage door.' },
	{ names: ['Outer skin', 'Inner skin', 'Stringer'], story: 'Two skins lap on a stringer, and one rivet holds all three.' },
	{ names: ['Patch', 'Skin', 'Rib flange'], story: 'A patch sits over a skin where it crosses a rib.' }
];

/** Rivets that go with a sheet, in 32nds: three times the thickness and the size above. */
function dashesFor(thickest: number): number[] {
	const least = Math.max(3, Math.ceil(96 * thickest - 1e-9));
	return [3, 4, 5, 6].filter((dash) => dash >= least && dash <= least + 1);
}

export const rivetLengthTasks = family({
	code: 'RL',
	id: 'rivet-length',
	rev: 1,
	topic: 'rivets',
	name: 'Length from the stack',
	method: rivetLength,
	draw(random, level) {
		const joint = random.pick(level === 1 ? twoLayers : threeLayers);
		const thin = sheetThicknesses.filter((size) => size >= 0.02 && size <= 0.063);
		const layers = joint.names.map(() => random.pick(thin));
		const dashes = dashesFor(Math.max(...layers));
		return {
			given: { layers, D: random.pick(dashes.length > 0 ? dashes : [6]) / 32 },
			story: joint.story,
			question: 'Which rivet length do you pull from the bin?',
			asked: level === 3 ? ['grip', 'needed', 'length'] : ['length'],
			labels: { layers: joint.names },
			told: [['Head', 'universal']],
			cautions: ['drive']
		};
	},
	figure: ({ layers, D }, say) => joint(layers, D, say),
	effect: (input, say) =>
		input.key === 'length' && typeof input.entered === 'number'
			? { entered: driven(input, input.entered, say), right: driven(input, Number(input.right.length), say) }
			: null
});

const width = 260;

function scaleFor(layers: readonly number[], D: number): number {
	return Math.min(150 / (stackHeight(layers, 1) + 2 * D), 46 / D);
}

function joint(layers: readonly number[], D: number, say: Say): Drawing {
	const scale = scaleFor(layers, D);
	const grip = stackHeight(layers, 1);
	const x = width / 2;
	const tip = (grip + 1.5 * D) * scale;
	const r = (D * scale) / 2;
	return {
		title: `Section through ${layers.length} layers with a rivet; its shank stands out past the last one.`,
		shapes: [
			...stackSection({ layers, names: layers.map((one) => say('layers', one)), width, scale }),
			...setRivet(x, D, grip + 1.5 * D, scale),
			...dimensionDown(0, grip * scale, width + 24, width, 'grip'),
			...dimensionDown(grip * scale, tip, width + 24, [width, x + r], 'for the shop head'),
			...dimensionAcross(x - r, x + r, tip + 26, tip, `D ${say('D', D)}`)
		]
	};
}

/**
 * The joint with a rivet of `length` driven to 1.5 D across. The metal that stands out first
 * fills the hole, whose size is the final drill's; the rest is the head, by volume.
 */
function driven({ given: { layers, D } }: EffectInput<typeof rivetLength>, length: number, say: Say): Outcome {
	const grip = stackHeight(layers, 1);
	const scale = scaleFor(layers, D);
	const fill = grip * ((finalDrill(D) / D) ** 2 - 1);
	const out = (length - grip) / D;
	const high = Math.max(0, (length - grip - fill) / 2.25);
	const stack = stackSection({ layers, names: [], width, scale });
	const named = say('length', length);
	const x = width / 2;
	if (out < 0.5) {
		return {
			drawing: { title: `${named}: no metal for a shop head.`, shapes: [...stack, ...setRivet(x, D, length, scale)] },
			says:
				out <= 0
					? `${named}: the shank does not even come through the stack.`
					: `${named}: only ${out.toFixed(2)} D stands out, too little for any head.`
		};
	}
	const head = { across: Math.min(1.5, 1 + out / 3) * D, high };
	return {
		drawing: {
			title: `${named}: a shop head ${(high / D).toFixed(2)} D high.`,
			shapes: [rectangle(0, 0, 0, 0, 'none', 'none'), ...stack, ...drivenRivet(x, D, grip, head, scale)]
		},
		says: `${named}: ${out.toFixed(2)} D stands out; driven to 1.5 D across it makes a head ${(high / D).toFixed(2)} D high${judged(high / D)}`
	};
}

function judged(high: number): string {
	if (high < 0.33) return ', too flat to hold (0.33 D is the least).';
	if (high > 1) return ': so much shank bends over instead of forming.';
	return '.';
}
