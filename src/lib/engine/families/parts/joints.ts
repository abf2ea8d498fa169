import { goTogether, isThickEnough } from '../../trade/parts-that-exist/layers.ts';
import { rivetDashes } from '../../trade/stock.ts';
import type { Random } from '../random.ts';

/** What is riveted together, and why: layer names from the manufactured head down. */
export interface Joint {
	readonly layers: readonly string[];
	readonly story: string;
	/** No layer is thicker than this, inches. */
	readonly most?: number;
}

function joint(story: string, ...layers: readonly string[]): Joint {
	return { layers, story };
}

export const twoLayerJoints: readonly Joint[] = [
	joint('The skin of a practice flap goes onto its rib flanges.', 'Skin', 'Rib flange'),
	joint('A stiffener is riveted across a panel that used to drum.', 'Skin', 'Stiffener'),
	joint('A new access plate is riveted to its frame.', 'Access plate', 'Frame'),
	joint('A pulley bracket goes onto the web of a bulkhead.', 'Bracket', 'Bulkhead web'),
	joint('A cracked spar web gets a splice plate.', 'Splice plate', 'Spar web'),
	joint('An angle ties a floor beam to a frame.', 'Angle', 'Frame'),
	joint('Two fuselage skins lap aft of the cabin door.', 'Upper skin', 'Lower skin'),
	{
		// Its rivets are 1/8 in and smaller, so that 3T must be, too.
		...joint(
			'The hinge of an elevator trim tab goes along the rear spar.',
			'Hinge leaf',
			'Spar web'
		),
		most: 0.04
	},
	joint('A patch covers a small hole in a side skin.', 'Patch', 'Skin'),
	joint('A gusset ties a rib to the spar.', 'Gusset', 'Spar web')
];

export const threeLayerJoints: readonly Joint[] = [
	joint('A doubler goes under the skin at a baggage door.', 'Skin', 'Doubler', 'Frame'),
	joint(
		'Two skins lap on a stringer; one rivet holds all three.',
		'Outer skin',
		'Inner skin',
		'Stringer'
	),
	joint('A patch covers a hole where the skin crosses a rib.', 'Patch', 'Skin', 'Rib flange'),
	joint('The skin stood off the spar cap, so a shim goes between.', 'Skin', 'Shim', 'Spar cap'),
	joint(
		'A cracked spar web gets a splice plate under a stiffener angle.',
		'Web',
		'Splice plate',
		'Angle'
	),
	joint(
		'An antenna on the cabin roof needs a doubler.',
		'Skin',
		'Antenna doubler',
		'Backing strip'
	),
	joint('A gusset and a shim go onto a bulkhead web.', 'Gusset', 'Shim', 'Bulkhead web'),
	joint(
		'A hinge bracket goes onto the rear spar, with a plate behind the web.',
		'Bracket',
		'Spar web',
		'Backing plate'
	)
];

const known = new Map<string, readonly (readonly number[])[]>();

/** Thicknesses for the layers of a joint, of those that go together. */
export function layersFor(
	random: Random,
	{ layers, most = Infinity }: Joint,
	sheets: readonly number[]
): readonly number[] {
	const key = `${layers.join()} ${sheets.join()}`;
	const all =
		known.get(key) ??
		stacks(
			layers,
			sheets.filter((T) => T <= most)
		);
	known.set(key, all);
	return random.pick(all);
}

/** Every stack of these layers that goes together, and that a stocked rivet goes with. */
function stacks(names: readonly string[], sheets: readonly number[]): number[][] {
	const all = names.reduce<number[][]>(
		(before) => before.flatMap((stack) => sheets.map((T) => [...stack, T])),
		[[]]
	);
	return all.filter(
		(stack) => goTogether(named(names, stack)) && rivetsFor(names, stack).length > 0
	);
}

/**
 * Rivets that go with a stack, inches: the stocked size nearest above 3T, and the one below it where that is
 * 2.5T or more, if no part is too thin for it. 3/16 in stands for 3T of 0.063 in, since 7/32 in is not stocked.
 */
export function rivetsFor(names: readonly string[], stack: readonly number[]): readonly number[] {
	const thickest = Math.max(...stack);
	const up = rivetDashes.findIndex((dash) => dash >= 96 * thickest - 0.05);
	const sizes = rivetDashes
		.filter((dash, i) => i === up || (i === up - 1 && dash >= 80 * thickest - 1e-9))
		.map((dash) => dash / 32);
	return sizes.filter(
		(D) =>
			isThickEnough(named(names, stack), D) &&
			(D < 1 / 4 || thickest > 0.065) &&
			(D <= 1 / 8 || !names.includes('Hinge leaf'))
	);
}

function named(names: readonly string[], stack: readonly number[]) {
	return stack.map((T, i) => ({ name: names[i] ?? '', T }));
}
