import { drillName } from '../drills.ts';
import { anyLength, lengthMistakes } from './length.ts';
import { measured } from './measured.ts';

/** Twist drills by name and size: No. 30 (0.1285 in). */
export const drill = measured({
	...anyLength,
	id: 'drill',
	noun: 'a drill',
	example: 'No. 30, F or 1/8 in',
	keys: 'text',
	hint: 'A drill such as #30, a fraction or a decimal.',
	names: {
		reading: ({ drillsAlone }) => drillsAlone,
		written(size, text) {
			const name = drillName(size);
			return name && `${name}${name.includes('/') ? ' in' : ''} (${text})`;
		},
		inLists: true
	},
	mistakes: { ...lengthMistakes, stocked: true }
});
