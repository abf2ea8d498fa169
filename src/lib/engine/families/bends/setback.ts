import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import { angleFromFlat, setbackDimension } from '../../figures/parts/bent-notes.ts';
import { setback } from '../../methods/setback.ts';
import { bendSheets } from '../../trade/nose-bars.ts';
import { bothLegsMetal } from './parts/bent-metal.ts';
import { family, type Say } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

const stories: Readonly<Record<Level, readonly string[]>> = {
	1: [
		'A clip that holds a fuel line is bent square from one strip.',
		'An angle closes the end of a floor beam.',
		'A battery tray gets four square sides; you lay out the first.',
		'A mounting tab for a radio rack is bent square in the brake.'
	],
	2: [
		'A stiffener follows a former that leans, so its flange is not square.',
		'A gusset joins two members that do not meet at a right angle.',
		'A cowl bracket is bent to the slope of the firewall.',
		'The lip of an air scoop is turned to lie along the duct.'
	],
	3: [
		'A rib flange follows the taper of a trailing edge.',
		'A hinge bracket for a trim tab is bent to the angle on its drawing.',
		'A baffle seals against the slope of the engine mount.',
		'A wheel fairing bracket takes an angle that is on no stop of the brake.'
	]
};

function angleFor(random: Random, level: Level): number {
	if (level === 1) return 90;
	return level === 2 ? random.pick([30, 45, 60, 75, 105, 120, 135]) : random.int(25, 150);
}

export const tasks = family({
	method: setback,
	draw(random, level) {
		const { alloy, T, bars } = random.pick(bendSheets);
		return {
			given: { R: random.pick(bars), T, angle: angleFor(random, level) },
			story: random.pick(stories[level]),
			question:
				level === 3
					? 'What are K and the setback of this bend?'
					: 'What is the setback of this bend?',
			asked: level === 3 ? ['K', 'setback'] : ['setback'],
			told: [['Material', alloy]],
			cautions: []
		};
	},
	figure: ({ R, T, angle }, say) => bendWithSetback(R, T, angle, say),
	metal: (seen) => bothLegsMetal(seen, seen.given)
});

function bendWithSetback(R: number, T: number, angle: number, say: Say): Drawing {
	const { part, shapes } = bendDetail({
		R,
		T,
		angle,
		labels: { R: `R ${say('R', R)}`, T: `T ${say('T', T)}` }
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
