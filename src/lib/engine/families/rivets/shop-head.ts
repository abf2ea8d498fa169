import { drivenSection } from '../../figures/parts/shop-head.ts';
import { shopHead } from '../../methods/shop-head.ts';
import { shopHeadD } from '../../methods/shop-head-d.ts';
import type { Method } from '../../solver/method.ts';
import { wantedHead } from '../../trade/shop-head.ts';
import { type Draw, family } from '../family.ts';
import { sheetAlloy } from '../parts/sheets-for-rivets.ts';
import { calledOut, diameterIn, fromNumber, lettersIn } from '../parts/numbered.ts';

const either: readonly string[] = [
	'Your bucking partner asks what shop head to look for.',
	'A test strip is driven and measured before work starts.'
];

const stories = {
	light: [
		...either,
		'You set the gauge before the first rivet of a flap skin is driven.',
		'The inspector wants the head size on the work card of a stringer repair.',
		'A squeezer is set up until it forms the head that is wanted.',
		'A row of rivets along a rib is squeezed, and the first head is measured.',
		'You cut a gauge from scrap for the heads of a door seam.'
	],
	heavy: [
		...either,
		'A spar splice is riveted, and the first head is measured.',
		'The inspector wants the head size on the work card of a spar repair.',
		'You cut a gauge from scrap for the heads in a wing attach angle.',
		'The rivets of a landing gear rib are driven with a heavy bar, and you check each head.',
		'You set the gauge before the first rivet of a keel beam is driven.'
	]
};

const method: Method = shopHead;
const numbered = fromNumber(shopHead);
const numberedD = fromNumber(shopHeadD);

export const tasks = family({
	method,
	others: [shopHeadD],
	draw(random, level) {
		const one = random.pick(['width', 'height'] as const);
		const isD = level === 3 && random.int(1, 3) === 1;
		const { story, number } = calledOut(random, stories, {
			older: level === 3,
			...(isD && { alloys: ['2017'] })
		});
		const start: Pick<Draw, 'method' | 'given'> =
			level === 1
				? { given: { D: diameterIn({ number }) } }
				: { method: isD ? numberedD : numbered, given: { number } };
		return {
			...start,
			story,
			question: {
				1:
					one === 'width'
						? 'How wide should the shop head be?'
						: 'How high should the shop head be?',
				2: 'How wide and how high should the shop head be?',
				3: 'What is the diameter of this rivet, and how wide and high should its shop head be?'
			}[level],
			asked: {
				1: [one],
				2: ['width', 'height'],
				3: ['diameter', 'width', 'height']
			}[level],
			chief: {
				...(level === 3 ? { diameter: ['diameterIn16ths', 'lastForDiameter'] } : {}),
				width: ['notSpread', 'otherWidth', 'universalWidth'],
				height: ['otherHeight', 'shankHeight', 'universalHeight']
			},
			told: level === 1 ? [['Rivet', number]] : [sheetAlloy(random, story)],
			basis:
				level === 3
					? 'The size wanted, by heart: it goes by the alloy letters (Fig. 4-76 of the airframe handbook).'
					: 'The size wanted of A, AD, B and DD rivets, by heart (Fig. 4-76 of the airframe handbook).',
			cautions: ['drive']
		};
	},
	figure: (given, say, like) => {
		const D = diameterIn(given);
		const notes = { across: 'width', high: 'height' };
		return {
			title: 'Section through two sheets and a driven rivet; its shop head is below.',
			shapes: drivenSection(
				D,
				wantedHead(D, lettersIn(given)),
				typeof given.number === 'string' ? notes : { ...notes, D: `D ${say('D', D)}` },
				like && diameterIn(like)
			)
		};
	},
	metal: (seen) => ({
		title: seen.says,
		shapes: drivenSection(diameterIn(seen.given), {
			across: seen.at('width'),
			high: seen.at('height')
		})
	})
});
