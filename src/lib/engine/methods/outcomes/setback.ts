import { shown } from '../../solver/write.ts';
import { chartFactor, thousandths } from '../../trade/tolerances.ts';
import { legOff } from './leg-off.ts';
import { nearRight } from './near-right.ts';

/** A setback too small leaves the flats on either side of the bend too long, and the legs with them. */
const more = shown('right.setback - setback');

/** What K and the setback do to the two legs of a bend. */
export const setbackOutcomes = [
	legOff(['K'], {
		shows: { more },
		right: nearRight('K', chartFactor, ''),
		fits: 'With {K} for K, both legs come out to their mold lines.',
		off: (by) => `With {K} for K, each leg comes out ${by}.`
	}),
	legOff(['setback'], {
		shows: { more },
		right: nearRight('setback', thousandths),
		fits: 'With {setback} for the setback, both legs come out to their mold lines.',
		off: (by) => `With {setback} for the setback, each leg comes out ${by}.`
	})
];
