import { TradeError } from '../solver/trade-function.ts';
import { source } from './source.ts';

/** Pilot and final drill for solid rivets. */
export const rivetDrillSource = source('airframe', 'ch. 4, p. 4-39, Fig. 4-90');

/** Rivet diameter in 32nds, and the final drill; the pilot printed is the nominal rivet size. */
export const rivetDrills: readonly { dash: number; final: string; finalSize: number }[] = [
	{ dash: 3, final: 'No. 40', finalSize: 0.098 },
	{ dash: 4, final: 'No. 30', finalSize: 0.1285 },
	{ dash: 5, final: 'No. 21', finalSize: 0.159 },
	{ dash: 6, final: 'No. 11', finalSize: 0.191 },
	{ dash: 8, final: 'F', finalSize: 0.257 }
];

function rowFor(diameter: number) {
	const row = rivetDrills.find(({ dash }) => Math.abs(dash / 32 - diameter) < 1e-6);
	if (row) return row;
	throw new TradeError(
		'The drill figure lists rivets of 3/32, 1/8, 5/32, 3/16 and 1/4 in: choose one of these.'
	);
}

/** Pilot drill in inches for a rivet diameter in inches. */
export function pilotDrill(diameter: number): number {
	return rowFor(diameter).dash / 32;
}

/** Final drill in inches for a rivet diameter in inches. */
export function finalDrill(diameter: number): number {
	return rowFor(diameter).finalSize;
}
