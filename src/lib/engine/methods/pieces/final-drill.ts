import { drill, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { misread } from '../../trade/table/misread.ts';
import { finalDrill } from '../../trade/tables/rivet-drills.ts';
import { drillSizes } from '../../trade/tolerances.ts';

export const final = piece(
	'final-drill',
	{ D: given(rivetDiameter, 'Rivet diameter') },
	step('finalDrill(D)', 'Final drill', {
		rule: 'drill.rivet',
		kind: drill,
		tolerance: drillSizes,
		slips: {
			nominal: slip(
				'D',
				'The nominal rivet size: the shank binds; the final drill is a little over it.'
			),
			...misread(finalDrill, 'D', { rowAbove: 'above', rowBelow: 'below' }),
			sixtyFourthOver: slip(
				'D + (1/64 in)',
				'1/64 in over the rivet is far too loose; about 0.003 in is wanted.'
			),
			sizeOver: slip(
				'D + (1/32 in)',
				'1/32 in over is the next rivet size; about 0.003 in over the shank is wanted.'
			)
		}
	})
);
