import { fraction } from '../../quantity/kinds.ts';
import { checked } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { blankSize } from '../blank-size.ts';
import { tolerance, within } from './parts/tolerance.ts';

const short = 'Do not trim it yet: see whether enough is left to finish the edges, and ask.';
const long = 'Cut it again to the line before you trim.';

export const check = checked(blankSize, {
	takes: { tolerance },
	measured: {
		length: given(fraction, 'Length as cut'),
		width: given(fraction, 'Width as cut')
	},
	optional: ['length', 'width'],
	each: 'blank',
	keeps: [
		...within('length', 'blankLength', {
			what: 'Length of the blank',
			behind: 'blankLength',
			short,
			long
		}),
		...within('width', 'blankWidth', {
			what: 'Width of the blank',
			behind: 'blankWidth',
			short,
			long
		})
	]
});
