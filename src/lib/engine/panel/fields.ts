import { alloyLetters } from '../trade/rivet-code.ts';

/*
 * What a panel file may hold, written once: its reader, its JSON Schema and the fields of the page
 * are made from this.
 */

/** What stands in a field: `lengths` is a list, `sheets` a number of layers. */
export type Reads = 'length' | 'angle' | 'count' | 'text' | 'choice' | 'lengths';

export interface Field {
	/** Behind the name of the part: `flange width`. */
	readonly label: string;
	readonly reads: Reads;
	/** Whether it must be there. */
	readonly needed?: true;
	/** Whether zero is a value. */
	readonly zero?: true;
	readonly choices?: readonly string[];
	/** Taken where it is left out. */
	readonly usual?: string;
	/** What it means, for the schema. */
	readonly says: string;
}

export type Fields = Readonly<Record<string, Field>>;

const length = (
	label: string,
	says: string,
	more: Omit<Partial<Field>, 'label' | 'reads' | 'says'> = {}
) => ({ label, reads: 'length', says, ...more }) as const;
const name = { label: 'name', reads: 'text', says: 'What it is called.' } as const;
const needed = { needed: true } as const;
const zero = { zero: true } as const;

/** Where an area begins, from the lower left corner of the panel. */
const corner = {
	x: length('place to the right', 'Lower left corner, from the left edge.', { ...needed, ...zero }),
	y: length('place up', 'Lower left corner, from the lower edge.', { ...needed, ...zero })
};

export const panelFields = {
	name,
	length: length('length', 'Finished length; to the mold line where an end is bent.', needed),
	width: length('width', 'Finished width; to the mold line where an edge is bent.', needed),
	thickness: length('thickness', 'Thickness of the sheet.', needed),
	alloy: { label: 'alloy', reads: 'text', usual: '2024-T3', says: 'Alloy and temper.' },
	cornerRadius: length('corner radius', 'Radius of the corners.', { ...zero, usual: '0' }),
	trim: length('trim', 'Added on every side of the flat blank, and trimmed off.', {
		...zero,
		usual: '0'
	})
} as const satisfies Fields;

export const memberFields = {
	name,
	runs: {
		label: 'run',
		reads: 'choice',
		choices: ['across', 'along'],
		needed: true,
		says: 'across: up the width of the panel; along: along its length.'
	},
	at: length(
		'place',
		'Middle of its flange: to the right where it runs across, up where it runs along.',
		{
			...needed,
			...zero
		}
	),
	flange: length('flange width', 'Width of the flange against the panel.', needed),
	thickness: length('thickness', 'Thickness of the flange.', needed),
	rows: { label: 'rows', reads: 'count', usual: '1', says: 'Rows of rivets, 1 or 2 staggered.' },
	from: length('beginning', 'Where it begins along its run; at the edge when left out.', zero),
	to: length('end', 'Where it ends along its run; at the edge when left out.'),
	drilled: {
		label: 'drilled holes',
		reads: 'lengths',
		says: 'Holes it has already, along its run from the left or lower edge; the panel is marked from them.'
	}
} as const satisfies Fields;

export const doublerFields = {
	name,
	...corner,
	length: length('length', 'Along the length of the panel.', needed),
	width: length('width', 'Along the width of the panel.', needed),
	thickness: length('thickness', 'Thickness of the doubler.', needed)
} as const satisfies Fields;

export const cutoutFields = {
	name,
	x: length('place to the right', 'Lower left corner, or the centre where it is round.', {
		...needed,
		...zero
	}),
	y: length('place up', 'Lower left corner, or the centre where it is round.', {
		...needed,
		...zero
	}),
	length: length('length', 'Along the length of the panel; not where it is round.'),
	width: length('width', 'Along the width of the panel; not where it is round.'),
	diameter: length('diameter', 'Of a round one.')
} as const satisfies Fields;

export const bendFields = {
	edge: {
		label: 'edge',
		reads: 'choice',
		choices: ['left', 'right', 'bottom', 'top'],
		needed: true,
		says: 'The edge that is bent up.'
	},
	leg: length('leg', 'The bent leg, to the mold line.', needed),
	angle: { label: 'bend angle', reads: 'angle', usual: '90', says: 'Degrees, from flat.' },
	radius: length('bend radius', 'Inside radius.', needed)
} as const satisfies Fields;

export const rivetFields = {
	head: {
		label: 'head',
		reads: 'choice',
		choices: ['universal', 'countersunk'],
		usual: 'universal',
		says: 'Manufactured head.'
	},
	alloy: {
		label: 'alloy',
		reads: 'choice',
		choices: Object.keys(alloyLetters),
		usual: '2117',
		says: 'Rivet alloy; 2117 is AD.'
	},
	diameter: length('diameter', 'Only to use another than the rule gives.')
} as const satisfies Fields;

export const stockFields = {
	length: length('length', 'Length of the sheet.', needed),
	width: length('width', 'Width of the sheet.', needed)
} as const satisfies Fields;

/** What stands beside the parts. */
export const planFields = {
	greatestPitch: length('greatest pitch', 'Widest space between rivets of a row.', needed),
	endMargin: length(
		'end margin',
		'From the end of a row to its first hole; the minimum edge distance and 1/16 in when left out.'
	),
	kerf: length('kerf', 'Metal that a cut takes.', { ...zero, usual: '0' })
} as const satisfies Fields;

/** The part of a panel file that `planFields` describe: they stand at its top. */
export function planPart(raw: Readonly<Record<string, unknown>>): Record<string, unknown> {
	return Object.fromEntries(Object.keys(planFields).map((key) => [key, raw[key]]));
}

/** The lists of a panel file, with the most they hold. */
export const lists = {
	members: { fields: memberFields, one: 'member', most: 40 },
	doublers: { fields: doublerFields, one: 'doubler', most: 40 },
	cutouts: { fields: cutoutFields, one: 'cut-out', most: 40 },
	bends: { fields: bendFields, one: 'bend', most: 4 },
	stock: { fields: stockFields, one: 'stock sheet', most: 40 }
} as const;

/** Version of the file and of what comes out. */
export const panelVersion = 1;
