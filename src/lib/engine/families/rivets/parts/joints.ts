/** What is riveted together, and why: layer names from the manufactured head down. */
export interface Joint {
	readonly layers: readonly string[];
	readonly story: string;
}

export const twoLayerJoints: readonly Joint[] = [
	{
		layers: ['Skin', 'Rib flange'],
		story: 'The skin of a practice flap goes onto its rib flanges.'
	},
	{
		layers: ['Skin', 'Stiffener'],
		story: 'A stiffener is riveted across a panel that used to drum in flight.'
	},
	{
		layers: ['Access plate', 'Frame'],
		story: 'The old access plate is off, and a new one is riveted to the frame.'
	},
	{
		layers: ['Bracket', 'Bulkhead web'],
		story: 'A bracket for a cable pulley goes onto the web of a bulkhead.'
	},
	{
		layers: ['Upper skin', 'Lower skin'],
		story: 'Two fuselage skins meet in a lap joint aft of the cabin door.'
	},
	{
		layers: ['Hinge leaf', 'Spar web'],
		story: 'The hinge of an elevator trim tab is riveted along the rear spar.'
	}
];

export const threeLayerJoints: readonly Joint[] = [
	{
		layers: ['Skin', 'Doubler', 'Frame'],
		story: 'A doubler goes between the skin and a frame at the edge of the baggage door.'
	},
	{
		layers: ['Outer skin', 'Inner skin', 'Stringer'],
		story: 'Two skins lap on a stringer, and one rivet holds all three.'
	},
	{
		layers: ['Patch', 'Skin', 'Rib flange'],
		story: 'A patch covers a hole in the skin where it crosses a rib.'
	},
	{
		layers: ['Skin', 'Shim', 'Spar cap'],
		story: 'The skin stood off the spar cap, so a shim was fitted between them.'
	},
	{
		layers: ['Web', 'Splice plate', 'Angle'],
		story: 'A cracked spar web gets a splice plate, held to the angle behind it.'
	},
	{
		layers: ['Skin', 'Antenna doubler', 'Backing strip'],
		story: 'An antenna base on the cabin roof needs a doubler and a backing strip.'
	}
];
