import { dashDiameter } from '../../methods/pieces/dash-diameter.ts';
import { diameterDash } from '../../methods/pieces/diameter-dash.ts';
import { partNumber } from '../../quantity/kinds.ts';
import type { Values } from '../../solver/compiled.ts';
import { given } from '../../solver/given.ts';
import { join, part } from '../../solver/join.ts';
import type { Method } from '../../solver/method.ts';
import { method } from '../../solver/write.ts';
import {
	headNumber,
	lettersOf,
	olderRivetNumber,
	rivetNumber,
	rivetNumberParts
} from '../../trade/rivet-code.ts';
import type { Random } from '../random.ts';
import { lengthDashes } from './solid-rivets.ts';

/** The steps that read a diameter out of a rivet number. */
const size = method({
	id: 'rivet-size',
	title: 'Rivet diameter from its number',
	given: { number: given(partNumber, 'Rivet number') },
	steps: { diameterDash, diameter: dashDiameter }
});

/** A method that starts from D, started from the number of the rivet instead. */
export function fromNumber(
	one: Method,
	{ id = `${one.id}-from-number`, title = one.title } = {}
): Method {
	return join({ id, title, parts: [part(size), part(one, { D: 'diameter' })] });
}

/** Rivet diameter of a draw that gives it, or gives the number of the rivet. */
export function diameterIn({ D, number }: Values): number {
	return typeof number === 'string' ? rivetNumberParts(number).diameterDash / 32 : Number(D);
}

/** Alloy letters of a draw that gives the number of the rivet. */
export function lettersIn({ number }: Values): string | undefined {
	return typeof number === 'string' ? lettersOf(rivetNumberParts(number).alloy) : undefined;
}

/** Alloys with the diameters their rivets are bought in, in 32nds. */
const bins = {
	'2117': [3, 4, 5, 6, 8],
	'2024': [5, 6, 8],
	'2017': [5, 6, 8]
} as const;

type Alloy = keyof typeof bins;

/** Alloys whose shop heads go by 1.5D and 0.5D. */
export const headAlikes: readonly Alloy[] = ['2117', '2024'];

/** The number of a universal rivet; at times the older number. */
export function someNumber(
	random: Random,
	{ older = false, alloys = headAlikes }: { older?: boolean; alloys?: readonly Alloy[] } = {}
): string {
	const alloy = random.pick(alloys);
	const dash = random.pick<number>(bins[alloy]);
	const [shortest, longest] = lengthDashes(dash);
	const write = older && random.int(0, 1) === 1 ? olderRivetNumber : rivetNumber;
	return write(headNumber('universal'), lettersOf(alloy), dash, random.int(shortest, longest));
}
