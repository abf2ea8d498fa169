import { type Drawing, rectangle, type Shape } from '../../figures/drawing.ts';
import { dimensionDown, leader } from '../../figures/parts/dimension.ts';
import { drillBit } from '../../figures/parts/drill-bit.ts';
import { drivenRivet, stackHeight, stackSection } from '../../figures/parts/joint.ts';
import { widthBeside } from '../../figures/parts/rivet.ts';
import { removalDrill } from '../../methods/removal-drill.ts';
import { wantedHead } from '../../trade/shop-head.ts';
import { sheetThicknesses } from '../../trade/stock.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import { type Joint, layersFor, rivetsFor } from '../parts/joints.ts';
import type { GivenValues } from '../../solver/method.ts';
import type { Level } from '../level.ts';
import { down } from '../../figures/size.ts';

const jobs: readonly Joint[] = [
	{
		layers: ['Skin', 'Rib flange'],
		story: 'A rivet along a rib was driven crooked and has to come out.'
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
		story: 'A dented skin comes off a frame and its doubler, rivet by rivet.'
	},
	{
		layers: ['Patch', 'Skin', 'Stringer'],
		story: 'An old patch is taken off so that a larger one can go on.'
	},
	{
		layers: ['Splice plate', 'Spar web'],
		story: 'A splice plate on a spar web is replaced.'
	},
	{
		layers: ['Bracket', 'Spar web', 'Backing plate'],
		story: 'A hinge bracket is taken off the rear spar and its backing plate.'
	},
	{
		layers: ['Gusset', 'Spar web'],
		story: 'A gusset with a crack is taken off its spar web.'
	},
	{
		layers: ['Skin', 'Shim', 'Spar cap'],
		story: 'One rivet over a shim has a cracked head and comes out.'
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
		const layers = layersFor(random, job, sheets);
		return {
			given: { layers, D: random.pick(rivetsFor(job.layers, layers)) },
			story: job.story,
			question: questions[level],
			asked: asked[level],
			labels: { layers: job.layers },
			chief: {
				drill: ['sameSize', 'finalAgain', 'twoUnder'],
				depth: ['oneDiameter', 'byDrill', 'halfDepth'],
				tightDepth: ['wholeGrip', 'oneThird', 'oneLayer']
			},
			told: [['Head', 'universal']],
			basis:
				level === 1
					? 'Universal heads by Fig. 4-98 of the airframe handbook.'
					: 'A universal head is 0.425D high (Fig. 4-74); drill and depths by Fig. 4-98 and p. 4-45 of the airframe handbook.',
			cautions: ['drill']
		};
	},
	figure: rivetToDrill,
	metal: cored
});

function scaleFor(layers: readonly number[], D: number): number {
	return Math.min(down(90) / stackHeight(layers, 1), down(46) / D);
}

function joint(
	layers: readonly number[],
	D: number,
	head: { across: number; high: number },
	scale: number,
	names: readonly string[] = []
): Shape[] {
	const x = widthBeside(D, scale) / 2;
	return [
		...stackSection({ layers, names, width: 2 * x, scale }),
		...drivenRivet(x, D, stackHeight(layers, 1), head, scale)
	];
}

type Given = GivenValues<typeof removalDrill>;

function rivetToDrill(given: Given, say: Say, like = given): Drawing {
	const { layers, D } = given;
	const scale = scaleFor(like.layers, like.D);
	const width = widthBeside(D, scale);
	const x = width / 2;
	const [r, bottom] = [(D * scale) / 2, stackHeight(layers, scale)];
	const shop = wantedHead(D);
	const tip = -0.85 * r - 8;
	const flank = tip - down(45);
	return {
		title: `Section through ${layers.length} layers and a driven rivet, a drill standing over its head.`,
		shapes: [
			...joint(
				layers,
				D,
				shop,
				scale,
				layers.map((one) => say('layers', one))
			),
			...drillBit(x, tip, 1.5 * r, down(90)),
			...leader(x + 0.75 * r, flank, x + 0.75 * r + 26, flank - 16, 'drill'),
			...dimensionDown(0, bottom, width + 22, width, 'grip'),
			...leader(
				x + r,
				0.6 * bottom,
				x + (shop.across / 2) * scale + 12,
				bottom + 34,
				`D ${say('D', D)}`
			)
		]
	};
}

/** Outcomes of a head drilled as it was asked. */
const asWanted = ['cores', 'face'];

/** What the drill takes away: the core of the head, or the edge of the hole as well. */
function cored(seen: SeenBy<typeof removalDrill>): Drawing {
	const { layers, D } = seen.given;
	const scale = scaleFor(layers, D);
	const [head, shopHead] = [
		seen.at('head'),
		{ across: seen.at('shopAcross'), high: seen.at('shopHigh') }
	];
	const x = widthBeside(D, scale) / 2;
	const deepest = head + seen.at('stack') + shopHead.high;
	const wide = Math.min(Math.max(seen.at('drill'), 0), 4 * D) * scale;
	const deep = Math.min(Math.max(seen.at('depth'), 0), deepest) * scale;
	return {
		title: seen.says,
		shapes: [
			...joint(layers, D, shopHead, scale),
			rectangle(
				x - wide / 2,
				-head * scale,
				wide,
				deep,
				'paper',
				asWanted.includes(seen.case) ? 'edge' : 'slip'
			)
		]
	};
}
