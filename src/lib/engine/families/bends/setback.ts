import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import { angleFromFlat, setbackDimension } from '../../figures/parts/bent-notes.ts';
import { setback } from '../../methods/setback.ts';
import { sheetFor } from './parts/sheet-for.ts';
import { bothLegsMetal } from './parts/bent-metal.ts';
import { betweenLegs, kRows, material } from './parts/told-rows.ts';
import { mostBend } from '../../trade/parts-that-exist/worked.ts';
import { family, type Say } from '../family.ts';
import type { Random } from '../random.ts';
import type { GivenValues } from '../../solver/method.ts';
import type { Level } from '../level.ts';

/** With the least and the greatest bend that such a part has, from flat. */
type Part = readonly [story: string, least: number, most: number];

const stories: Readonly<Record<Level, readonly Part[]>> = {
	1: [
		['A clip that holds a fuel line is bent square from one strip.', 90, 90],
		['An angle closes the end of a floor beam.', 90, 90],
		['A battery tray gets four square sides; you lay out the first.', 90, 90],
		['A mounting tab for a radio rack is bent square in the brake.', 90, 90],
		['The foot of a seat stop is turned up square.', 90, 90],
		['A drip edge over a cabin door gets one square bend.', 90, 90]
	],
	2: [
		['A stiffener follows a former that leans, so its flange is not square.', 75, 105],
		['A gusset joins two members that do not meet at a right angle.', 30, 135],
		['A cowl bracket is bent to the slope of the firewall.', 60, 120],
		['The lip of an air scoop is turned back past square.', 105, 135],
		['A tab for a wire bundle leans away from its frame.', 30, 75],
		['The flange of a web follows the sweep of a spar.', 75, 105],
		['A door stop is bent to the angle on its drawing.', 30, 135]
	],
	3: [
		['A rib flange follows the taper of a trailing edge.', 78, 102],
		['A hinge bracket for a trim tab is bent to the angle on its drawing.', 25, mostBend],
		['A baffle seals against the slope of the engine mount.', 50, 130],
		['A wheel fairing bracket takes an angle that is on no stop of the brake.', 25, mostBend],
		['A seal retainer follows the slope of a windshield post.', 40, mostBend],
		['A deflector is bent to the angle found in a full-size layout.', 25, 90]
	]
};

function storyFor(random: Random, level: Level, angle: number): string {
	return random.pick(
		stories[level].filter(([, least, most]) => angle >= least && angle <= most)
	)[0];
}

function angleFor(random: Random, level: Level): number {
	if (level === 1) return 90;
	return level === 2 ? random.pick([30, 45, 60, 75, 105, 120, 135]) : random.int(25, mostBend);
}

const chief = {
	1: { setback: ['noT', 'middle'] },
	2: { setback: ['legs', 'square', 'noT'] },
	3: { K: ['legs', 'square'], setback: ['legs', 'noT'] }
} as const;

export const tasks = family({
	method: setback,
	draw(random, level) {
		const angle = angleFor(random, level);
		const story = storyFor(random, level, angle);
		const { alloy, T, bars } = sheetFor(random, story);
		return {
			given: { R: random.pick(bars), T, angle },
			story,
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
