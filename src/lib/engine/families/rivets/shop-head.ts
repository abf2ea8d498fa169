import { drivenSection } from '../../figures/parts/shop-head.ts';
import { wantedHead } from '../../trade/shop-head.ts';
import { shopHead } from '../../methods/shop-head.ts';
import { family } from '../family.ts';

const stories: readonly string[] = [
	'You set up the gauge before the first rivet of a flap skin is driven.',
	'Your bucking partner asks how far the tail should go before you call the rivet done.',
	'A test strip is driven and measured before work starts on the spar splice.',
	'The inspector wants the wanted head size on the work card of a stringer repair.',
	'A new squeezer set is trimmed until it forms the head that is wanted.'
];

/** Letters of the rivets whose shop heads go by 1.5 D and 0.5 D. */
const letters = ['A', 'AD', 'B', 'DD'] as const;

const questions = {
	width: 'How wide should the shop head be?',
	height: 'How high should the shop head be?'
} as const;

export const tasks = family({
	method: shopHead,
	draw(random, level) {
		const one = random.pick(['width', 'height'] as const);
		const dashes = level === 3 ? [3, 5, 6, 8, 10, 12] : [3, 4, 5, 6, 8];
		return {
			given: { D: random.pick(dashes) / 32 },
			story: random.pick(stories),
			question: level === 1 ? questions[one] : 'How wide and how high should the shop head be?',
			asked: level === 1 ? [one] : ['width', 'height'],
			told: [['Alloy letters', random.pick(letters)]],
			basis: 'The size wanted by Fig. 4-76 of the airframe handbook.',
			cautions: ['drive']
		};
	},
	figure: ({ D }, say) => ({
		title: 'Section through two sheets and a driven rivet; its shop head is below.',
		shapes: drivenSection(D, wantedHead(D), {
			D: `D ${say('D', D)}`,
			across: 'width',
			high: 'height'
		})
	}),
	metal: (seen) => ({
		title: seen.says,
		shapes: drivenSection(seen.given.D, { across: seen.at('width'), high: seen.at('height') })
	})
});
