import { dashDiameter } from '../../../methods/pieces/dash-diameter.ts';
import { diameterDash } from '../../../methods/pieces/diameter-dash.ts';
import { partNumber } from '../../../quantity/kinds.ts';
import type { Values } from '../../../solver/compiled.ts';
import { given } from '../../../solver/given.ts';
import { join, part } from '../../../solver/join.ts';
import type { Method } from '../../../solver/method.ts';
import { method } from '../../../solver/write.ts';
import {
	headNumber,
	lettersOf,
	olderRivetNumber,
	rivetNumber,
	rivetNumberParts
} from '../../../trade/rivet-code.ts';
import type { Random } from '../../random.ts';
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

/** AD and DD rivets with the diameters they are bought in, in 32nds. */
const bins = [
	{ alloy: '2117', dashes: [3, 4, 5, 6, 8] },
	{ alloy: '2024', dashes: [5, 6, 8] }
] as const;

/** The number of a rivet whose shop head goes by 1.5D and 0.5D; at times the older number. */
export function someNumber(random: Random, { older = false } = {}): string {
	const { alloy, dashes } = random.pick(bins);
	const dash = random.pick<number>(dashes);
	const [shortest, longest] = lengthDashes(dash);
	const write = older && random.int(0, 1) === 1 ? olderRivetNumber : rivetNumber;
	const head = random.pick(['universal', 'countersunk'] as const);
	return write(headNumber(head), lettersOf(alloy), dash, random.int(shortest, longest));
}
