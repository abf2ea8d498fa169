import { compiledOf } from '$lib/engine/solver/compiled.ts';
import type { Method } from '$lib/engine/solver/method.ts';
import { styleAt } from '$lib/engine/solver/show.ts';

/** What may be typed for a step, in one short line. */
export function answerHint(method: Method, key: string): string {
	if (compiledOf(method).steps[key]?.list) return 'All of them in order, with semicolons between.';
	const style = styleAt(method, key);
	switch (style) {
		case 'rivet-length':
		case 'rivet-diameter':
			return 'A fraction, a decimal, mm or a dash number.';
		case 'drill':
			return 'A drill such as #30, a fraction or a decimal.';
		case 'count':
			return 'A whole number.';
		case 'words':
			return 'Letters and numbers as on the bag.';
		case 'factor':
		case 'hundredth':
			return 'Three places or more.';
		case 'degrees':
			return 'Degrees, from flat unless it says otherwise.';
		case 'pounds':
			return 'Pounds or kilograms.';
		case 'thousandth':
		case 'fraction':
			return 'A fraction, a decimal, mm, or the sum to work out.';
		default:
			return style satisfies never;
	}
}
