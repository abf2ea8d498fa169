import { drivenSection, type ShopHead } from '../../figures/parts/shop-head.ts';
import { shopHeadCheck } from '../../methods/shop-head-check.ts';
import { type EffectInput, family, type Outcome } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

const stories: readonly string[] = [
	'You go down a row of rivets on a rib with the caliper before the inspector comes.',
	'A classmate drove this rivet in a lap seam and hands you the panel.',
	'One head in a stringer splice looks unlike the others, so you measure it.',
	'The first rivet from a new bucking bar is measured before the row goes on.',
	'A returned wing tip shows a shop head that somebody circled with a felt pen.'
];

/** A kind of head: lowest and highest width and height, in hundredths of D. */
interface Kind {
	readonly width: readonly [number, number];
	readonly height: readonly [number, number];
}

// All stay 0.05 D away from the limits of 1.25, 1.66, 0.33 and 0.66 D.
const good: Kind = { width: [132, 160], height: [40, 60] };
const underDriven: Kind = { width: [104, 119], height: [73, 100] };
const overDriven: Kind = { width: [173, 195], height: [18, 27] };
const tooHigh: Kind = { width: [131, 138], height: [72, 76] };
const tooFlat: Kind = { width: [132, 158], height: [18, 27] };
const tooWide: Kind = { width: [172, 195], height: [40, 60] };

const kinds: Readonly<Record<Level, readonly Kind[]>> = {
	1: [good, underDriven, overDriven],
	2: [good, underDriven, overDriven, tooHigh, tooFlat],
	3: [good, tooHigh, tooFlat, tooWide]
};

const questions: Readonly<Record<Level, string>> = {
	1: 'Do you accept this shop head?',
	2: 'How narrow and how wide may it be, and do you accept it?',
	3: 'What are the limits of this head, and do you accept it?'
};

const limits = ['leastWidth', 'mostWidth', 'leastHeight', 'mostHeight'] as const;

export const tasks = family({
	method: shopHeadCheck,
	draw(random, level) {
		const D = random.pick([3, 4, 5, 6]) / 32;
		const kind = random.pick(kinds[level]);
		return {
			given: {
				D,
				width: measured(random, D, kind.width),
				height: measured(random, D, kind.height)
			},
			story: random.pick(stories),
			question: questions[level],
			asked: [...limits.slice(0, level === 1 ? 0 : level === 2 ? 2 : 4), 'judgement'],
			told: [['Alloy letters', 'AD']],
			basis: 'Limits by Fig. 4-76 of the airframe handbook.',
			cautions: ['drill']
		};
	},
	figure: ({ D, width, height }, say) => ({
		title:
			'Section through two sheets and a driven rivet with the width and height of its shop head.',
		shapes: drivenSection(
			D,
			{ across: width, high: height },
			{ D: `D ${say('D', D)}`, across: say('width', width), high: say('height', height) }
		)
	}),
	effect: (input) =>
		input.key === 'judgement'
			? { entered: after(input, input.entered), right: after(input, input.right.judgement) }
			: null
});

/** A size as a caliper shows it, between so many hundredths of D. */
function measured(random: Random, D: number, [low, high]: readonly [number, number]): number {
	return Math.round(D * random.int(low, high) * 10) / 1000;
}

/** The head after what was decided about it. */
function after({ given }: EffectInput<typeof shopHeadCheck>, decided: unknown): Outcome {
	const { D, width: across, height: high } = given;
	const sized = (head: ShopHead) =>
		`${(head.across / D).toFixed(2)} D across and ${(head.high / D).toFixed(2)} D high`;
	const outcome = (head: ShopHead, says: string): Outcome => ({
		drawing: { title: says, shapes: drivenSection(D, head) },
		says
	});
	if (decided === 'replace') {
		const fresh = { across: 1.5 * D, high: 0.5 * D };
		return outcome(fresh, `Drilled out and driven new: ${sized(fresh)}, if the hole was not hurt.`);
	}
	if (decided === 'drive more') {
		const driven = drivenOn({ across, high }, D);
		return outcome(driven, `Driven on, it spreads and flattens to ${sized(driven)}.`);
	}
	return outcome({ across, high }, `Left as it is: ${sized({ across, high })}.`);
}

/** More blows: to 1.5 D across, or a tenth wider if it is that wide already; the metal stays. */
function drivenOn({ across, high }: ShopHead, D: number): ShopHead {
	const wider = across < 1.45 * D ? 1.5 * D : 1.1 * across;
	return { across: wider, high: high * (across / wider) ** 2 };
}
