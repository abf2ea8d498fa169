import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import { angleFromFlat, setbackDimension } from '../../figures/parts/bent-notes.ts';
import { setback } from '../../methods/setback.ts';
import { bendSheets } from '../../trade/nose-bars.ts';
import { bothLegsMetal } from './parts/bent-metal.ts';
import { betweenLegs, kRows, material } from './parts/told-rows.ts';
import { family, type Say } from '../family.ts';
import type { Random } from '../random.ts';
import type { GivenValues } from '../../solver/method.ts';
import type { Level } from '../level.ts';

const stories: Readonly<Record<Level, readonly string[]>> = {
	1: [
		'A clip that holds a fuel line is bent square from one strip.',
		'An angle closes the end of a floor beam.',
		'A battery tray gets four square sides; you lay out the first.',
		'A mounting tab for a radio rack is bent square in the brake.',
		'The foot of a seat stop is turned up square.',
		'A drip edge over a cabin door gets one square bend.'
	],
	2: [
		'A stiffener follows a former that leans, so its flange is not square.',
		'A gusset joins two members that do not meet at a right angle.',
		'A cowl bracket is bent to the slope of the firewall.',
		'The lip of an air scoop is turned to lie along the duct.',
		'A tab for a wire bundle leans away from its frame.',
		'The flange of a web follows the sweep of a spar.'
	],
	3: [
		'A rib flange follows the taper of a trailing edge.',
		'A hinge bracket for a trim tab is bent to the angle on its drawing.',
		'A baffle seals against the slope of the engine mount.',
		'A wheel fairing bracket takes an angle that is on no stop of the brake.',
		'A seal retainer follows the slope of a windshield post.',
		'A deflector is bent to the angle found in a full-size layout.'
	]
};

function angleFor(random: Random, level: Level): number {
	if (level === 1) return 90;
	return level === 2 ? random.pick([30, 45, 60, 75, 105, 120, 135]) : random.int(25, 150);
}

const chief = {
	1: { setback: ['noT', 'middle'] },
	2: { setback: ['legs', 'square', 'noT'] },
	3: { K: ['legs', 'square'], setback: ['legs', 'noT'] }
} as const;

export const tasks = family({
	method: setback,
	draw(random, level) {
		const { alloy, T, bars } = random.pick(bendSheets);
		const angle = angleFor(random, level);
		return {
			given: { R: random.pick(bars), T, angle },
			story: random.pick(stories[level]),
			question:
				level === 3
					? 'What are K and the setback of this bend?'
					: 'What is the setback of this bend?',
			asked: level === 3 ? ['K', 'setback'] : ['setback'],
			chief: chief[level],
			told: level === 1 ? [material(alloy)] : [material(alloy), betweenLegs(angle), kRows(angle)],
			...(level === 1 && { basis: 'K of a square bend is 1: that one is known by heart.' }),
			cautions: []
		};
	},
	figure: bendWithSetback,
	metal: (seen) => bothLegsMetal(seen, seen.given)
});

type Given = GivenValues<typeof setback>;

function bendWithSetback({ R, T, angle }: Given, say: Say, like?: Given): Drawing {
	const { part, shapes } = bendDetail({
		R,
		T,
		angle,
		labels: { R: `R ${say('R', R)}`, T: `T ${say('T', T)}` },
		like
	});
	return {
		title: `Section through a bend of ${say('angle', angle)} from flat with its mold lines; the setback is marked.`,
		shapes: [
			...shapes,
			...part.corners.flatMap((corner) => [
				...setbackDimension(corner),
				...angleFromFlat(corner, say('angle', angle))
			])
		]
	};
}
