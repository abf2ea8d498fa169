import { length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method } from '../solver/write.ts';
import { diameterInJoint } from './outcomes/diameter.ts';
import { stockedDiameter } from './pieces/stocked-diameter.ts';
import { threeT } from './pieces/three-t.ts';

export const rivetDiameter = method({
	id: 'rivet-diameter',
	title: 'Rivet diameter from the thickest sheet',
	given: {
		thickest: given(length, 'Thickest sheet', { symbol: 'T' })
	},
	steps: {
		threeT,
		diameter: stockedDiameter
	},
	outcomes: [diameterInJoint]
});
