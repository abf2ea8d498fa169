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
import { jointLengths, thinLengths } from './solid-rivets.ts';

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

/** What a rivet holds: skins, doors and the like, or heavier structure. */
type Use = 'light' | 'heavy';

/** Alloys with the diameters their rivets are used in, in 32nds. */
const bins: Readonly<Record<Use, Readonly<Record<string, readonly number[]>>>> = {
	light: { '2117': [3, 4, 5] },
	heavy: { '2117': [5, 6], '2024': [5, 6, 8], '2017': [5, 6, 8] }
};

/** Alloys whose shop heads go by 1.5D and 0.5D. */
const headAlikes: readonly string[] = ['2117', '2024'];

interface Wanted {
	/** Whether the number may be the older one. */
	readonly older?: boolean;
	readonly alloys?: readonly string[];
	readonly heads?: readonly string[];
}

/** A story with the number of a rivet that goes with it. */
export function calledOut(
	random: Random,
	stories: Readonly<Record<Use, readonly string[]>>,
	{ older = false, alloys = headAlikes, heads = ['universal'] }: Wanted = {}
): { story: string; number: string } {
	const use = random.pick(
		(['light', 'heavy'] as const).filter((one) => dashes(one, alloys).length)
	);
	const [alloy, dash] = random.pick(dashes(use, alloys));
	const write = older && random.int(0, 1) === 1 ? olderRivetNumber : rivetNumber;
	return {
		story: random.pick(stories[use]),
		number: write(
			headNumber(random.pick(heads)),
			lettersOf(alloy),
			dash,
			random.int(...(use === 'light' ? thinLengths(dash) : jointLengths(dash)))
		)
	};
}

function dashes(use: Use, alloys: readonly string[]): (readonly [alloy: string, dash: number])[] {
	return alloys.flatMap((alloy) => (bins[use][alloy] ?? []).map((dash) => [alloy, dash] as const));
}
