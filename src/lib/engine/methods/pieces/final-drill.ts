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
		asks: 'Which drill makes the final hole?',

		rule: 'drill.rivet',
		kind: drill,
		tolerance: drillSizes,
		slips: {
			nominal: slip('D', 'A hole of the nominal rivet size: the shank binds in it.'),
			...misread(finalDrill, 'D', { rowAbove: 'above', rowBelow: 'below' }),
			drillUnder: slip(
				'chartSizeBelow(drillOfSize(finalDrill(D)))',
				'One drill too small: Fig. 4-90 has the next larger one.'
			),
			drillOver: slip(
				'chartSizeAbove(drillOfSize(finalDrill(D)))',
				'One drill too large: Fig. 4-90 has the next smaller one.'
			),
			sixtyFourthUnder: slip('D - (1/64 in)', '1/64 in under the rivet: a hole to be reamed.', {
				rare: true
			}),
			no40ForFinal: slip(
				'0.098 in',
				'No. 40 is for a 3/32 in rivet: the final drill goes by the rivet.',
				{
					rare: true
				}
			),
			no30ForFinal: slip(
				'0.1285 in',
				'No. 30 is for a 1/8 in rivet: the final drill goes by the rivet.',
				{ rare: true }
			),
			twiceForFinal: slip('2 * D', 'Twice the rivet: a dash number counts 32nds, not 16ths.', {
				rare: true
			}),
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
