/*
 * How a number is typed in a shop. Each way takes inches (or a plain number) and gives the text.
 */

export type Way = (value: number) => string;

/** To four places, trailing noughts left out down to three, no nought in front: `.0785`, `1.250`. */
export const decimal: Way = (value) => bare(value.toFixed(4).replace(/0$/, ''));

/** As a micrometer is read: `.078`. */
export const thousandths: Way = (value) => bare(value.toFixed(3));

export const hundredths: Way = (value) => bare(value.toFixed(2));

/** A nought in front and the unit behind: `0.375 in`. */
export const withUnit: Way = (value) => `${plain(value, 4)} in`;

/** A whole number, or as many decimals as it has, up to four. */
export const number: Way = (value) => plain(value, 4);

/** Millimetres with the unit, as a calculator set to metric gives them. */
export const millimetres: Way = (value) => `${plain(value * 25.4, 2)} mm`;

/** Millimetres without the unit: typed into a field that reads inches. */
export const bareMillimetres: Way = (value) => plain(value * 25.4, 2);

/** Digits behind the point cut off, as many as are kept. */
export const cutTo =
	(places: number): Way =>
	(value) =>
		bare(plain(Math.floor(value * 10 ** places + 1e-9) / 10 ** places, places));

/** The nearest mark of a scale divided into `per` parts an inch: `1 3/16`. */
export const fractionOf =
	(per: number): Way =>
	(value) => {
		let [top, bottom] = [Math.round(value * per), per];
		while (top % 2 === 0 && bottom > 1) [top, bottom] = [top / 2, bottom / 2];
		const whole = Math.floor(top / bottom);
		const rest = top - whole * bottom;
		if (rest === 0) return `${whole}`;
		return whole === 0 ? `${rest}/${bottom}` : `${whole} ${rest}/${bottom}`;
	};

/** A fraction where the value is one on a scale of 64ths, otherwise decimals. */
export const fraction: Way = (value) =>
	Math.abs(value * 64 - Math.round(value * 64)) < 1e-6 ? fractionOf(64)(value) : decimal(value);

/** A dash number: `-6`. */
export const dash: Way = (value) => `-${plain(value, 1)}`;

/** Several values in one field. */
export const list = (values: readonly number[], way: Way, between = ', '): string =>
	values.map(way).join(between);

/**
 * A wrong value as typed. Null where it comes out right, within half a thousandth, or where it is
 * no size at all.
 */
export function off(wrong: number, right: number, way: Way = decimal): string | null {
	if (!Number.isFinite(wrong) || wrong <= 0 || Math.abs(wrong - right) < 5e-4) return null;
	return way(wrong);
}

/** A right value typed to so few digits that it is off by more than half a thousandth. */
export function coarse(right: number, way: Way): string | null {
	return off(Number(way(right)), right) === null ? null : way(right);
}

/** A right value rounded to a scale of so many marks an inch, off by more than half a thousandth. */
export const rounded = (right: number, per: number): string | null =>
	off(nearest(right, per), right, fractionOf(per));

/**
 * A right value read off a scale of so many marks an inch. Null within 1/64 in: who lays out with a
 * scale is right by that much.
 */
export function onScale(right: number, per: number): string | null {
	const mark = nearest(right, per);
	return mark === 0 || Math.abs(mark - right) <= 1 / 64 ? null : fractionOf(per)(right);
}

/** The digits right, but two neighbours behind the point changed places: `.358` for `.385`. */
export function swapped(right: number, way: Way, first: number): string | null {
	const digits = [...way(right)];
	const at = digits.indexOf('.') + 1 + first;
	const [one, other] = [digits[at], digits[at + 1]];
	if (one === undefined || other === undefined || one === other) return null;
	digits[at] = other;
	digits[at + 1] = one;
	return digits.join('');
}

export function sum(values: readonly number[]): number {
	return values.reduce((total, value) => total + value, 0);
}

/** The next mark at or above: `up(0.26, 16)` is 5/16. A hair over a mark is on it. */
export const up = (value: number, per: number): number => Math.ceil(value * per - 1e-6) / per;
export const down = (value: number, per: number): number => Math.floor(value * per + 1e-6) / per;
export const nearest = (value: number, per: number): number => Math.round(value * per) / per;

function plain(value: number, places: number): string {
	return `${Number(value.toFixed(places))}`;
}

function bare(text: string): string {
	return text.replace(/^0\./, '.');
}
