import { drivenSection } from '../../figures/parts/shop-head.ts';
import { shopHead } from '../../methods/shop-head.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';

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
		shapes: drivenSection(
			D,
			{ across: 1.5 * D, high: 0.5 * D },
			{ D: `D ${say('D', D)}`, across: 'width', high: 'height' }
		)
	}),
	effect: (input, say) =>
		typeof input.entered === 'number'
			? {
					entered: headOf(input, input.entered, say),
					right: headOf(input, Number(input.right[input.key]), say)
				}
			: null
});

/** The shop head with one of its sizes as answered and the other as wanted. */
function headOf(
	{ given: { D }, right, key }: EffectInput<typeof shopHead>,
	size: number,
	say: Say
): Outcome {
	const head = { across: Number(right.width), high: Number(right.height) };
	const times = (size / D).toFixed(2);
	const says =
		key === 'width'
			? `${say(key, size)} is ${times} D across${judged(size / D, 1.25, 1.5, 1.66)}`
			: `${say(key, size)} is ${times} D high${judged(size / D, 0.33, 0.5, 0.66)}`;
	return {
		drawing: {
			title: says,
			shapes: drivenSection(
				D,
				key === 'width' ? { ...head, across: size } : { ...head, high: size }
			)
		},
		says
	};
}

function judged(times: number, least: number, wanted: number, most: number): string {
	if (times < least - 0.001) return `, under the least of ${least} D.`;
	if (times > most + 0.001) return `, over the most of ${most} D.`;
	return Math.abs(times - wanted) < 0.011
		? ', the size to aim for.'
		: ': allowed, but not the size to aim for.';
}
