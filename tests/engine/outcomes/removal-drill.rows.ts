import type { OutcomeRow } from './outcome-row.ts';

/*
 * FAA-H-8083-31B, ch. 4, pp. 4-44 to 4-46, Fig. 4-98, and Fig. 4-74: for a 1/8 rivet the drill is 3/32, the
 * head 0.425 × 0.125 = 0.0531 in high.
 */

const joint = { layers: [0.04, 0.05], D: 1 / 8 };

export const rows: readonly OutcomeRow[] = [
	{
		given: joint,
		key: 'drill',
		entered: 0.1285,
		case: 'over',
		says: 'The No. 30 (0.1285 in) drill is over the shank: it cuts the hole itself.'
	},
	{
		given: joint,
		key: 'drill',
		entered: 0.12,
		case: 'rim',
		says: 'The No. 31 (0.120 in) drill leaves next to nothing of the shank’s rim: the least wander cuts the hole.'
	},
	{
		given: joint,
		key: 'drill',
		entered: 3 / 32,
		case: 'cores',
		says: 'The 3/32 in (0.0938 in) drill cores the head and leaves a ring that snaps off.'
	},
	{
		given: joint,
		key: 'drill',
		entered: 0.098,
		case: 'near',
		says: 'The No. 40 (0.098 in) drill leaves a ring that may snap off; 1/32 in under the rivet is 3/32 in (0.0938 in).'
	},
	{
		given: joint,
		key: 'drill',
		entered: 1 / 16,
		case: 'thick',
		says: 'The 1/16 in (0.0625 in) drill leaves too thick a ring: the head does not snap off.'
	},
	{
		given: joint,
		key: 'drill',
		entered: 0,
		case: 'nothing',
		says: 'A drill of 0.000 in takes nothing away.'
	},
	{
		given: joint,
		key: 'depth',
		entered: 0.062,
		case: 'past',
		says: '0.062 in deep goes past the head and into the sheet: it can spoil the hole.'
	},
	{
		given: joint,
		key: 'depth',
		entered: 0.045,
		case: 'short',
		says: '0.045 in deep stops inside the head, which stays on.'
	},
	// Within 1/128 in of 0.053125: 0.0453 to 0.0609.
	{
		given: joint,
		key: 'depth',
		entered: 0.0609,
		case: 'face',
		says: '0.0609 in deep takes the head to the face of the sheet and no farther.'
	},
	{
		given: joint,
		key: 'depth',
		entered: 0.0454,
		case: 'face',
		says: '0.0454 in deep takes the head to the face of the sheet and no farther.'
	}
];
