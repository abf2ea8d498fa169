import { source } from '../source.ts';
import { airframe, type Rules } from './rule.ts';

export const cutting = {
	'cut.trim': {
		says: 'Trim allowance is added on every side that is finished to the line.',
		sources: [airframe('pp. 4-77, 4-79'), source('none', '', 'practice')]
	},
	'cut.sheet': {
		says: 'Every cut but the last takes a kerf, so a kerf is added to the sheet and to the piece before dividing. Only whole pieces count.',
		sources: [source('none', 'plain arithmetic', 'worked')]
	},
	'cut.bar': {
		says: 'The last piece needs no cut after it: a kerf is added to the bar and to the piece before dividing.',
		sources: [source('none', 'plain arithmetic', 'worked')]
	},
	'drawing.tolerance': {
		says: 'A drawing tells how far a size may be off, at the dimension or in the title block. No handbook prints it for a shear or a brake.',
		sources: [source('general', 'ch. 4, pp. 4-20, 4-21')]
	},
	'cut.density': {
		says: 'Nominal density in lb/in³: 1100 0.098, 2014 0.101, 2024 0.100, 3003 0.099, 5052 0.097.',
		sources: [source('aluminum', 'table 4.3')]
	},
	'cut.weight': {
		says: 'Weight is length times width times thickness times the density of the alloy.',
		sources: [source('none', 'plain arithmetic', 'worked')]
	}
} as const satisfies Rules;
