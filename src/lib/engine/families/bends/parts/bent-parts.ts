import type { Random } from '../../random.ts';
import type { Level } from '../../level.ts';

/** A shape that is bent from one strip. */
interface Shape {
	readonly story: string;
	/** Names of the legs from edge to edge. */
	readonly legs: readonly string[];
	/** Least and greatest size of each leg, in sixteenths of an inch. */
	readonly sixteenths: readonly (readonly [number, number])[];
	/** Whether the outer legs are of one size. */
	readonly even: boolean;
	/** Bend angles to choose from; square when left out. */
	readonly angles?: readonly number[];
}

const flange = [10, 20] as const;
const web = [20, 44] as const;

const angles: readonly Shape[] = [
	'An angle clip ties a rib to the spar web.',
	'An angle stiffener goes along the edge of a lightened web.',
	'The sill of a baggage door gets a new angle.',
	'A plain angle carries the end of an instrument shelf.',
	'An angle closes the corner of a battery box.',
	'An angle holds the lower edge of a firewall blanket.'
].map((story) => ({ story, legs: ['Flange', 'Leg'], sixteenths: [flange, [20, 36]], even: false }));

const channels: readonly Shape[] = [
	...[
		'A channel stiffens the floor between two frames.',
		'The cross member of a seat base is bent up as a channel.',
		'A channel carries the pulleys behind the firewall.',
		'A channel frames the opening of an access panel.'
	].map((story) => ({
		story,
		legs: ['Flange', 'Web', 'Flange'],
		sixteenths: [flange, web, flange],
		even: true
	})),
	...[
		'A Z section stiffens a side skin.',
		'A Z section joins a bulkhead to the floor, one flange wider than the other.'
	].map((story) => ({
		story,
		legs: ['Lower flange', 'Web', 'Upper flange'],
		// The flanges are never alike, which tells a Z from a channel.
		sixteenths: [
			[14, 20],
			[16, 32],
			[8, 12]
		] as const,
		even: false
	}))
];

const harder: readonly Shape[] = [
	...['A hat section stiffens the belly skin.', 'A hat section runs under the cabin floor.'].map(
		(story) => ({
			story,
			legs: ['Flange', 'Side', 'Top', 'Side', 'Flange'],
			sixteenths: [
				[10, 14],
				[14, 18],
				[18, 28],
				[14, 18],
				[10, 14]
			] as const,
			even: true
		})
	),
	...(
		[
			['An angle follows the slope of the firewall, so it is not square.', [60, 75, 105, 120]],
			['The lip of a duct is turned in past square to hold a seal.', [105, 120, 135]],
			['A gusset flange opens out to lie on the sloping floor.', [30, 45, 60]],
			['A stiffener opens to follow a tapered web.', [45, 60, 75]]
		] as const
	).map(([story, bends]) => ({
		story,
		legs: ['Flange', 'Leg'],
		sixteenths: [
			[14, 24],
			[24, 36]
		] as const,
		even: false,
		angles: bends
	}))
];

const shapes: Readonly<Record<Level, readonly Shape[]>> = { 1: angles, 2: channels, 3: harder };

/** A part drawn for a task. */
export interface BentPart {
	readonly story: string;
	/** Names and mold line dimensions of the legs, from edge to edge. */
	readonly names: readonly string[];
	readonly legs: readonly number[];
	/** Bend angles from flat. */
	readonly angles: readonly number[];
}

/** An angle at level 1, a channel or a Z at level 2, a hat or a bend that is not square at 3. */
export function drawBentPart(random: Random, level: Level): BentPart {
	const { story, legs: names, sixteenths, even, angles = [90] } = random.pick(shapes[level]);
	const sizes = sixteenths.map(([least, greatest]) => random.int(least, greatest) / 16);
	// An even part reads the same from either edge.
	const legs = sizes.map((size, i) =>
		even ? (sizes[Math.min(i, sizes.length - 1 - i)] ?? size) : size
	);
	const bend = random.pick(angles);
	return { story, names, legs, angles: names.slice(1).map(() => bend) };
}
