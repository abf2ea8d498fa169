import { encode } from 'uqr';

/** A text as a QR code: how many modules wide it is, and its dark modules as an SVG path. */
export interface QrPath {
	readonly size: number;
	readonly path: string;
}

/**
 * The QR code of a text, with the four modules of quiet around it that readers want. Dark modules
 * side by side are one bar: the path is a third as long as with single ones.
 */
export function qrPath(text: string): QrPath {
	const { size, data } = encode(text, { ecc: 'M', border: 4 });
	const bars = data.flatMap((row, y) =>
		row.flatMap((dark, x) => {
			if (!dark || row[x - 1]) return [];
			const end = row.indexOf(false, x);
			const length = (end < 0 ? row.length : end) - x;
			return `M${x} ${y}h${length}v1h-${length}z`;
		})
	);
	return { size, path: bars.join('') };
}
