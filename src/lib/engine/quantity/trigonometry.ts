import { work } from './arithmetic-mathjs.ts';
import { unread } from './wanted.ts';

/*
 * Pi, and sine, cosine and tangent of degrees, put into arithmetic as the numbers they are. They
 * have no exact size; twelve places are kept.
 */

const places = 12;
const inside = /(sin|cos|tan) ?(?:\(([^()]*)\)|(\d+(?:\.\d*)?|\.\d+) ?°?)/;
const functions: Readonly<Record<string, (radians: number) => number>> = {
	sin: Math.sin,
	cos: Math.cos,
	tan: Math.tan
};

/** The text with numbers in their place; a refusal where there is none. */
export function withNumbers(text: string): string | ReturnType<typeof unread> {
	let plain = text.replace(/([\d)]) ?pi\b/g, '$1*pi').replace(/\bpi\b/g, Math.PI.toFixed(places));
	for (let found = inside.exec(plain); found; found = inside.exec(plain)) {
		const [all, name = '', sum, bare] = found;
		const degrees = work((sum ?? bare ?? '').replace(/ ?(?:°|deg(?:rees)?)/g, ''), new Map());
		if (typeof degrees !== 'object') {
			return unread(`Put an angle in degrees between the brackets, like ${name}(45).`);
		}
		const value = functions[name]?.((degrees.value.valueOf() * Math.PI) / 180) ?? NaN;
		if (!(Math.abs(value) < 1e9)) return unread(`There is no ${name} of that angle.`);
		plain = plain.replace(all, `(${value.toFixed(places)})`);
	}
	return plain;
}
