import { type Exact, exactly, mixedText, ratio } from './exact.ts';

/*
 * Twist drill sizes: FAA-H-8083-31B, ch. 4, Fig. 4-47, p. 4-18.
 */

/** Number drills from No. 1 up, in 1/10,000 in. */
const numberSizes = [
	2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770,
	1730, 1695, 1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160,
	1130, 1110, 1100, 1065, 1040, 1015, 995, 980, 960, 935, 890, 860, 820, 810, 785, 760, 730, 700,
	670, 635, 595, 550, 520, 465, 430, 420, 410, 400
];

/** Letter drills from A up, in 1/1,000 in. */
const letterSizes = [
	234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348,
	358, 368, 377, 386, 397, 404, 413
];

const letterA = 'A'.charCodeAt(0);

/** The size of a number drill in inches; null unless there is one of that number, 1 to 60. */
export function numberDrill(number: number): Exact | null {
	const size = numberSizes[number - 1];
	return size === undefined ? null : ratio(BigInt(size), 10_000n);
}

/** The size of a letter drill in inches, A to Z. */
export function letterDrill(letter: string): Exact | null {
	const size = letterSizes[letter.toUpperCase().charCodeAt(0) - letterA];
	return size === undefined ? null : ratio(BigInt(size), 1000n);
}

/**
 * Size in inches of the drill with a name such as `No. 30`, `#30`, `30`, `letter F`, `F` or `1/8`;
 * null when no drill is called that.
 */
export function drillSize(name: string): Exact | null {
	const [, number, letter, top, bottom] =
		/^(?:(?:no\.? ?|# ?)?(\d{1,2})|(?:letter )?([a-z])|(\d\d?)\/(\d\d?))$/i.exec(name.trim()) ?? [];
	if (number) return numberDrill(Number(number));
	if (letter) return letterDrill(letter);
	if (!top || !bottom || Number(bottom) === 0) return null;
	const size = ratio(BigInt(top), BigInt(bottom));
	return isFractionDrill(size) ? size : null;
}

/**
 * Name of the drill of exactly this size in inches: `1/8`, `No. 30`, `letter F`; null when there is
 * none. The letter E drill is the 1/4.
 */
export function drillName(size: number | Exact): string | null {
	const exact = typeof size === 'number' ? exactly(size) : size;
	if (isFractionDrill(exact)) return mixedText(exact);
	const at = (sizes: readonly number[], per: number) =>
		sizes.findIndex((one) => exact.equals(ratio(BigInt(one), BigInt(per))));
	const number = at(numberSizes, 10_000);
	if (number >= 0) return `No. ${number + 1}`;
	const letter = at(letterSizes, 1000);
	return letter >= 0 ? `letter ${String.fromCharCode(letterA + letter)}` : null;
}

/** Fraction drills go by 64ths, below an inch. */
function isFractionDrill(size: Exact): boolean {
	return size.compare(0) > 0 && size.compare(1) < 0 && 64n % size.d === 0n;
}
