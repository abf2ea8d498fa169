import { drill, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { misread } from '../../trade/table/misread.ts';
import { pilotDrill } from '../../trade/tables/rivet-drills.ts';
import { drillSizes } from '../../trade/tolerances.ts';

export const pilot = piece(
	'pilot-drill',
	{ D: given(rivetDiameter, 'Rivet diameter') },
	step('pilotDrill(D)', 'Pilot drill', {
		asks: 'Which drill makes the pilot hole?',

		rule: 'drill.rivet',
		kind: drill,
		tolerance: drillSizes,
		slips: {
			finalForPilot: slip(
				'finalDrill(D)',
				'That is the final drill; the pilot goes first, in the nominal rivet size.'
			),
			removalForPilot: slip(
				'D - (1/32 in)',
				'1/32 in under the rivet: Fig. 4-90 lists the nominal rivet size as the pilot.'
			),
			smallerFinal: slip(
				'finalDrillAbove(D)',
				'That is the final drill of the next smaller rivet: the pilot is the nominal rivet size.',
				{ rare: true, act: 'smaller final' }
			),
			...misread(pilotDrill, 'D', { lastForPilot: 'above', nextForPilot: 'below' }),
			pilot64thUnder: slip('D - (1/64 in)', '1/64 in under: the pilot is the nominal rivet size.', {
				rare: true
			}),
			pilot16thUnder: slip('D - (1/16 in)', '1/16 in under: the pilot is the nominal rivet size.', {
				rare: true
			}),
			no40ForPilot: slip(
				'0.098 in',
				'No. 40 is the final drill of a 3/32 in rivet: the pilot is the nominal rivet size.',
				{ act: 'smaller final' }
			),
			no30ForPilot: slip(
				'0.1285 in',
				'No. 30 is the final drill of a 1/8 in rivet: the pilot is the nominal rivet size.',
				{ rare: true, act: 'smaller final' }
			),
			sixteenthForPilot: slip(
				'1/16 in',
				'1/16 in for every rivet: the pilot is the nominal rivet size.',
				{ rare: true }
			),
			twiceForPilot: slip('2 * D', 'Twice the rivet: the pilot is the nominal rivet size.', {
				rare: true
			})
		}
	})
);
