/**
 * A rational number, in lowest terms. What a person types and every tolerance edge is decided with
 * these.
 */
export class Exact {
	/** Its sign: 1, or -1 below zero. */
	readonly s: bigint;
	/** Numerator without the sign. */
	readonly n: bigint;
	/** Denominator. */
	readonly d: bigint;
	/** The nearest float, once it was asked for: marking asks for it again and again. */
	#float: number | undefined;

	/** @throws RangeError when the denominator is zero */
	constructor(numerator: bigint, denominator = 1n) {
		if (denominator === 0n) throw new RangeError('a fraction of nought');
		const [n, d] = [size(numerator), size(denominator)];
		const common = greatestCommon(n, d);
		this.s = numerator < 0n === denominator < 0n || n === 0n ? 1n : -1n;
		this.n = n / common;
		this.d = d / common;
	}

	add(other: Exact): Exact {
		return new Exact(this.s * this.n * other.d + other.s * other.n * this.d, this.d * other.d);
	}

	sub(other: Exact): Exact {
		return this.add(new Exact(-other.s * other.n, other.d));
	}

	mul(other: Exact | number): Exact {
		const { s, n, d } = exactOf(other);
		return new Exact(this.s * s * this.n * n, this.d * d);
	}

	/** @throws RangeError when the other is zero */
	div(other: Exact | number): Exact {
		const { s, n, d } = exactOf(other);
		return new Exact(this.s * s * this.n * d, this.d * n);
	}

	abs(): Exact {
		return new Exact(this.n, this.d);
	}

	/** 1, -1 or 0 as this is more than, less than or equal to the other. */
	compare(other: Exact | number): number {
		const { s, n, d } = exactOf(other);
		const [own, others] = [this.s * this.n * d, s * n * this.d];
		return own === others ? 0 : own > others ? 1 : -1;
	}

	equals(other: Exact | number): boolean {
		return this.compare(other) === 0;
	}

	/** The nearest float. */
	valueOf(): number {
		this.#float ??= Number(this.s * this.n) / Number(this.d);
		return this.#float;
	}
}

/** Whether a number is within a tolerance, both of its edges inside, of a computed float. */
export function isWithin(value: Exact, computed: number, tolerance: Exact): boolean {
	const over = Math.abs(value.valueOf() - computed) - tolerance.valueOf();
	// Only near an edge is more than floats needed to tell.
	if (Math.abs(over) > 1e-6 * Math.max(1, Math.abs(computed))) return over < 0;
	return value.sub(exactly(computed)).abs().compare(tolerance) <= 0;
}

function exactOf(value: Exact | number): Exact {
	return typeof value === 'number' ? exactly(value) : value;
}

function size(value: bigint): bigint {
	return value < 0n ? -value : value;
}

function greatestCommon(one: bigint, other: bigint): bigint {
	let [larger, smaller] = [one, other];
	while (smaller > safest) [larger, smaller] = [smaller, larger % smaller];
	if (smaller === 0n) return larger;
	// Plain numbers are many times faster, and nearly all are small.
	let [more, less] = [Number(smaller), Number(larger % smaller)];
	while (less !== 0) [more, less] = [less, more % less];
	return BigInt(more);
}

/** Up to here a whole number is the same as a float. */
const safest = BigInt(Number.MAX_SAFE_INTEGER);

/** Computed floats are taken to this many decimal places. */
const floatPlaces = 9;

/** numerator / denominator. The denominator must not be zero. */
export function ratio(numerator: bigint, denominator = 1n): Exact {
	return new Exact(numerator, denominator);
}

/**
 * The number that digits stand for: whole part, decimals and power of ten. Each text must hold
 * digits only, or nothing.
 */
export function fromDigits(whole: string, decimals: string, power = 0): Exact {
	const places = decimals.length - power;
	const digits = BigInt(whole + decimals);
	return places > 0 ? ratio(digits, 10n ** BigInt(places)) : ratio(digits * 10n ** BigInt(-places));
}

/**
 * The rational meant by a computed float: its nearest multiple of 1e-9, so that 0.032 + 0.040 is
 * 72/1000.
 *
 * @throws Error when the value is not finite
 */
export function exactly(value: number): Exact {
	if (!Number.isFinite(value)) throw new Error(`not a finite number: ${value}`);
	const whole = Math.trunc(value);
	const scale = 10 ** floatPlaces;
	const rest = Math.round((value - whole) * scale);
	return ratio(BigInt(whole) * BigInt(scale) + BigInt(rest), BigInt(scale));
}

/**
 * Decimal text with at least `least` and at most `most` places, the last one rounded half up
 * (away from zero below it). The minus is U+2212, and there is no minus zero.
 */
export function decimalText(value: Exact, least: number, most: number): string {
	const scale = 10n ** BigInt(most);
	const units = (value.n * scale * 2n + value.d) / (value.d * 2n);
	const digits = String(units).padStart(most + 1, '0');
	const at = digits.length - most;
	const decimals = digits.slice(at).replace(/0+$/, '').padEnd(least, '0');
	const sign = value.s < 0n && units !== 0n ? '−' : '';
	return sign + digits.slice(0, at) + (decimals && `.${decimals}`);
}

/** Whether the value ends within so many decimal places. */
export function endsWithin(value: Exact, places: number): boolean {
	return 10n ** BigInt(places) % value.d === 0n;
}

/** `5/16`, `1 1/2` or `3`, for a value that is not below zero. */
export function mixedText({ n, d }: Exact): string {
	const [whole, part] = [n / d, n % d];
	if (part === 0n) return String(whole);
	return whole === 0n ? `${part}/${d}` : `${whole} ${part}/${d}`;
}
