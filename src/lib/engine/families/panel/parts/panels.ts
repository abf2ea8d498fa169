/** A panel and what is behind it: rows of rivets along each frame, rib or stringer. */
export interface PanelStory {
	readonly story: string;
	/** Its layers from the manufactured head down; a doubler lies on the skin. */
	readonly layers: readonly string[];
	/** Fewest and most of what is behind it. */
	readonly rows: readonly [number, number];
	/** What the rows follow, one of it and many. */
	readonly behind: readonly [one: string, many: string];
	/** The thinnest or thickest skin that it is made of, inches, where not every sheet goes. */
	readonly least?: number;
	readonly most?: number;
}

function panel(
	story: string,
	[one, many]: PanelStory['behind'],
	rows: PanelStory['rows'],
	...layers: readonly string[]
): PanelStory {
	return { story, behind: [one, many], rows, layers };
}

const frame = ['frame', 'Frames'] as const;
const rib = ['rib', 'Ribs'] as const;
const stringer = ['stringer', 'Stringers'] as const;
const stiffener = ['stiffener', 'Stiffeners'] as const;
const beam = ['beam', 'Floor beams'] as const;

/** Panels whose rivets all go through the same two layers. */
export const plainPanels: readonly PanelStory[] = [
	panel(
		'A side panel goes back onto its frames, with one row of rivets along each frame from edge to edge.',
		frame,
		[2, 4],
		'Skin',
		'Frame flange'
	),
	{
		...panel(
			'A cabin floor panel is riveted to its floor beams, one row along each beam from edge to edge.',
			beam,
			[2, 4],
			'Floor panel',
			'Floor beam flange'
		),
		least: 0.025
	},
	panel(
		'A new belly skin lies over its stringers. One row follows each stringer from edge to edge.',
		stringer,
		[3, 5],
		'Belly skin',
		'Stringer'
	),
	{
		...panel(
			'A practice flap gets its lower skin, one row along each rib from the nose to the trailing edge.',
			rib,
			[3, 5],
			'Lower skin',
			'Rib flange'
		),
		most: 0.032
	},
	panel(
		'The wall panel of a baggage bay is stiffened. One row holds each stiffener from edge to edge.',
		stiffener,
		[2, 4],
		'Wall panel',
		'Stiffener'
	),
	panel(
		'A bulkhead web gets its upright stiffeners, one row along each from edge to edge.',
		stiffener,
		[3, 5],
		'Bulkhead web',
		'Stiffener'
	),
	panel(
		'A tail cone panel is fitted over its frames, with one row along each frame from edge to edge.',
		frame,
		[2, 3],
		'Skin',
		'Frame flange'
	)
];

/** Panels with a doubler on the outside of the skin, which the rows cross. */
export const doubledPanels: readonly PanelStory[] = [
	panel(
		'A side panel gets an outer doubler across its middle, for an antenna. One row follows each frame from edge to edge, through the doubler at A and beside it at B.',
		frame,
		[2, 4],
		'Doubler',
		'Skin',
		'Frame flange'
	),
	panel(
		'A belly skin is doubled outside where the step is bolted on. One row follows each stringer from edge to edge, through the doubler at A and beside it at B.',
		stringer,
		[3, 5],
		'Doubler',
		'Belly skin',
		'Stringer'
	),
	panel(
		'A wing skin panel has an outer doubler round its fuel filler. One row follows each rib from edge to edge, through the doubler at A and beside it at B.',
		rib,
		[2, 4],
		'Doubler',
		'Wing skin',
		'Rib flange'
	),
	panel(
		'A bulkhead web is doubled across its middle for a pulley bracket. One row follows each stiffener from edge to edge, through the doubler at A and beside it at B.',
		stiffener,
		[2, 4],
		'Doubler',
		'Bulkhead web',
		'Stiffener'
	),
	panel(
		'A tail cone panel gets an outer doubler for a beacon light. One row follows each frame from edge to edge, through the doubler at A and beside it at B.',
		frame,
		[2, 3],
		'Doubler',
		'Skin',
		'Frame flange'
	),
	panel(
		'A side panel was dented and gets a doubler outside. One row follows each stringer from edge to edge, through the doubler at A and beside it at B.',
		stringer,
		[3, 5],
		'Doubler',
		'Skin',
		'Stringer'
	)
];
