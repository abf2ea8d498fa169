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
		rule: 'drill.rivet',
		kind: drill,
		tolerance: drillSizes,
		slips: {
			finalForPilot: slip(
				'finalDrill(D)',
				'That is the final drill; the pilot goes through first and is the nominal rivet size.'
			),
			removalForPilot: slip(
				'D - (1/32 in)',
				'1/32 in under the rivet is for drilling a head off; the pilot is the nominal rivet size.'
			),
			halfForPilot: slip('D / 2', 'Half the rivet: the pilot is the nominal rivet size.'),
			...misread(pilotDrill, 'D', { nextForPilot: 'below' })
		}
	})
);
