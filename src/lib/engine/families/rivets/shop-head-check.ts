import { drivenSection } from '../../figures/parts/shop-head.ts';
import { shopHeadCheck } from '../../methods/shop-head-check.ts';
import { family } from '../family.ts';
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
	metal: (seen) => ({
		title: seen.says,
		shapes: drivenSection(seen.given.D, { across: seen.at('across'), high: seen.at('high') })
	})
});

/** A size as a caliper shows it, between so many hundredths of D. */
function measured(random: Random, D: number, [low, high]: readonly [number, number]): number {
	return Math.round(D * random.int(low, high) * 10) / 1000;
}
