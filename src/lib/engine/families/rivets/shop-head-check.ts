import { drivenSection } from '../../figures/parts/shop-head.ts';
import { shopHeadCheck } from '../../methods/shop-head-check.ts';
import { family } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';
import { jointLengths } from '../parts/solid-rivets.ts';

/** Rivets that were just driven, as each story says: a head that is not far enough may be driven more. */
const fresh: readonly string[] = [
	'You have just driven a row of rivets on a rib and go down it with the caliper.',
	'Your partner has just driven this rivet, and you measure it before calling it done.',
	'One of the heads you have just driven in a stringer splice looks different from the others, so you measure it.',
	'You have a new bucking bar and measure the first rivet just driven on it before the rest of the row.',
	'The squeezer is set up; you measure the first head it has just driven.',
	'A practice seam, still in the clamps, is measured rivet by rivet just as each is driven.'
];

/** Rivets of a returned part: a bad one is replaced, and never driven again. */
const returned: readonly string[] = [
	'A returned frame has a shop head that somebody circled with a felt pen.',
	'A repaired floor beam comes back with a note about one rivet.'
];

/** A kind of head: lowest and highest width and height, in hundredths of D. */
interface Kind {
	readonly width: readonly [number, number];
	readonly height: readonly [number, number];
	/** Slips that lead to another judgement of such a head. */
	readonly chief: readonly string[];
	/** Driven more, it may come within the limits: never told of a returned part. */
	readonly mends?: boolean;
}

// All stay 0.05 D away from the limits of 1.25, 1.66, 0.33 and 0.66 D.
const good: Kind = {
	width: [132, 160],
	height: [40, 60],
	chief: ['drivenWithin', 'replacedWithin']
};
const underDriven: Kind = {
	width: [104, 119],
	height: [73, 100],
	chief: ['accepted', 'replaced'],
	mends: true
};
const overDriven: Kind = { width: [173, 195], height: [18, 27], chief: ['accepted', 'drivenMore'] };
const tooHigh: Kind = {
	width: [131, 138],
	height: [72, 76],
	chief: ['accepted', 'widthAlone'],
	mends: true
};
const tooFlat: Kind = { width: [132, 158], height: [18, 27], chief: ['accepted', 'widthAlone'] };
const tooWide: Kind = { width: [172, 195], height: [40, 60], chief: ['accepted', 'heightAlone'] };

const kinds: Readonly<Record<Level, readonly Kind[]>> = {
	1: [good, underDriven, overDriven],
	2: [good, underDriven, overDriven, tooHigh, tooFlat],
	3: [good, tooHigh, tooFlat, tooWide]
};

const questions: Readonly<Record<Level, string>> = {
	1: 'Do you accept this shop head?',
	2: 'What are the minimum and maximum width, and do you accept the head?',
	3: 'What are its minimum and maximum width and height, and do you accept it?'
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
			story: random.pick(kind.mends ? fresh : [...fresh, ...returned]),
			question: questions[level],
			asked: [...limits.slice(0, level === 1 ? 0 : level === 2 ? 2 : 4), 'judgement'],
			chief: {
				leastWidth: ['wantedForLeast', 'shankForLeast'],
				mostWidth: ['wantedForMost', 'otherMostWidth'],
				leastHeight: ['wantedForLow', 'mostForLow'],
				mostHeight: ['wantedForHigh', 'leastForHigh'],
				judgement: kind.chief
			},
			told: [['Rivet', `MS20470AD${32 * D}-${random.int(...jointLengths(32 * D))}`]],
			basis:
				level === 1
					? 'Fig. 4-76 of the airframe handbook: 1.25D to 1.66D across and 0.33D to 0.66D high. Only a rivet just driven may be driven more (p. 4-40).'
					: 'Limits for A, AD, B and DD rivets, by heart (Fig. 4-76 of the airframe handbook). Only a rivet just driven may be driven more (p. 4-40).',
			cautions: []
		};
	},
	figure: ({ D, width, height }, say, like) => ({
		title:
			'Section through two sheets and a driven rivet with the width and height of its shop head.',
		shapes: drivenSection(
			D,
			{ across: width, high: height },
			{ D: `D ${say('D', D)}`, across: say('width', width), high: say('height', height) },
			like?.D
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
