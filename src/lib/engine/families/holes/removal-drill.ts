import { type Drawing, rectangle, type Shape } from '../../figures/drawing.ts';
import { dimensionDown, leader } from '../../figures/parts/dimension.ts';
import { drillBit } from '../../figures/parts/drill-bit.ts';
import { drivenRivet, stackHeight, stackSection } from '../../figures/parts/joint.ts';
import { removalDrill } from '../../methods/removal-drill.ts';
import { rivetDashes, sheetThicknesses } from '../../trade/stock.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';
import type { Joint } from '../rivets/parts/joints.ts';
import type { Level } from '../level.ts';

const jobs: readonly Joint[] = [
	{
		layers: ['Skin', 'Rib flange'],
		story: 'A rivet on a rib was driven at a slant and has to come out.'
	},
	{
		layers: ['Access plate', 'Frame'],
		story: 'A riveted access plate must come off to reach a cable pulley.'
	},
	{
		layers: ['Skin', 'Stiffener'],
		story: 'The inspector circled one rivet with a cut head along a stiffener.'
	},
	{
		layers: ['Skin', 'Doubler', 'Frame'],
		story: 'A dented skin comes off a frame, rivet by rivet.'
	},
	{
		layers: ['Patch', 'Skin', 'Stringer'],
		story: 'An old patch is taken off so that a larger one can go on.'
	}
];

const asked = {
	1: ['drill'],
	2: ['drill', 'depth'],
	3: ['drill', 'depth', 'tightDepth']
} as const satisfies Record<Level, readonly string[]>;

const questions: Readonly<Record<Level, string>> = {
	1: 'Which drill do you take to the head?',
	2: 'Which drill do you take to the head, and how deep do you go?',
	3: 'Which drill, how deep for the head, and how deep if the shank is tight?'
};

const sheets = sheetThicknesses.filter((size) => size >= 0.025 && size <= 0.08);

export const tasks = family({
	method: removalDrill,
	draw(random, level) {
		const job = random.pick(jobs);
		return {
			given: {
				layers: job.layers.map(() => random.pick(sheets)),
				D: random.pick(rivetDashes.filter((dash) => dash < 8 || level > 1)) / 32
			},
			story: job.story,
			question: questions[level],
			asked: asked[level],
			labels: { layers: job.layers },
			told: [['Head', 'universal']],
			basis: 'Universal heads by Fig. 4-98 and p. 4-45 of the airframe handbook.',
			cautions: ['drill']
		};
	},
	figure: ({ layers, D }, say) => rivetToDrill(layers, D, say),
	effect: (input, say) => drilled(input, say)
});

const width = 250;
const x = width / 2;

function scaleFor(layers: readonly number[], D: number): number {
	return Math.min(90 / stackHeight(layers, 1), 46 / D);
}

function joint(layers: readonly number[], D: number, names: readonly string[] = []): Shape[] {
	const scale = scaleFor(layers, D);
	const head = { across: 1.5 * D, high: 0.5 * D };
	return [
		...stackSection({ layers, names, width, scale }),
		...drivenRivet(x, D, stackHeight(layers, 1), head, scale)
	];
}

function rivetToDrill(layers: readonly number[], D: number, say: Say): Drawing {
	const scale = scaleFor(layers, D);
	const [r, bottom] = [(D * scale) / 2, stackHeight(layers, scale)];
	return {
		title: `Section through ${layers.length} layers and a driven rivet, a drill standing over its head.`,
		shapes: [
			...joint(
				layers,
				D,
				layers.map((one) => say('layers', one))
			),
			...drillBit(x, -0.85 * r - 8, 1.5 * r, 90),
			...leader(x + 0.75 * r, -60, x + 46, -76, 'drill'),
			...dimensionDown(0, bottom, width + 22, width, 'grip'),
			...leader(x + r, 0.6 * bottom, x + 84, bottom + 34, `D ${say('D', D)}`)
		]
	};
}

/** What the drill takes away: the core of the head, or the edge of the hole as well. */
function drilled(input: EffectInput<typeof removalDrill>, say: Say) {
	const { key, entered, right } = input;
	if ((key !== 'drill' && key !== 'depth') || typeof entered !== 'number') return null;
	return {
		entered: key === 'drill' ? byDrill(input, entered, say) : toDepth(input, entered, say),
		right:
			key === 'drill'
				? byDrill(input, Number(right.drill), say)
				: toDepth(input, Number(right.depth), say)
	};
}

function cored(
	{ given: { layers, D } }: EffectInput<typeof removalDrill>,
	drill: number,
	depth: number
): Shape[] {
	const scale = scaleFor(layers, D);
	const top = -0.425 * D * scale;
	const deepest = stackHeight(layers, 1) + 0.925 * D;
	const wide = Math.min(Math.max(drill, 0), 4 * D) * scale;
	const deep = Math.min(Math.max(depth, 0), deepest) * scale;
	return [...joint(layers, D), rectangle(x - wide / 2, top, wide, deep, 'paper', 'slip')];
}

function byDrill(input: EffectInput<typeof removalDrill>, drill: number, say: Say): Outcome {
	const { D } = input.given;
	const says = `The ${say('drill', drill)} drill ${judgedDrill(drill - D, D)}`;
	return { drawing: { title: says, shapes: cored(input, drill, 0.425 * D) }, says };
}

function judgedDrill(over: number, D: number): string {
	if (over > 1e-6) return 'is over the shank: it cuts the hole itself.';
	if (over > -0.02)
		return 'leaves next to nothing of the shank’s rim: the least wander cuts the hole.';
	if (over > -0.04) return 'cores the head and leaves a ring that snaps off.';
	return over > -D ? 'leaves too thick a ring: the head does not snap off.' : 'takes nothing away.';
}

function toDepth(input: EffectInput<typeof removalDrill>, depth: number, say: Say): Outcome {
	const head = Number(input.right.depth);
	const says = `${say('depth', depth)} deep ${judgedDepth(depth - head)}`;
	return { drawing: { title: says, shapes: cored(input, Number(input.right.drill), depth) }, says };
}

function judgedDepth(past: number): string {
	if (past > 0.0015) return 'goes past the head, into the hole of the sheet.';
	if (past < -0.0015) return 'stops inside the head, which stays on.';
	return 'takes the head to the face of the sheet and no farther.';
}
