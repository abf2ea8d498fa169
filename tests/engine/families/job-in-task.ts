import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import { rivetNumberParts } from '../../../src/lib/engine/trade/rivet-code.ts';
import type { Job, Layer } from '../../../src/lib/engine/trade/parts-that-exist/index.ts';
import { lettersOf } from '../../../src/lib/engine/trade/rivet-code.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';

/**
 * What a task tells of its part or job: givens by the keys that methods call them by, right values
 * where they are asked for, and the rows that are only told.
 */
export function jobIn({ family, drawn, right }: Task): Job {
	const { story, cautions, labels = {}, told = [] } = drawn;
	const given: Readonly<Record<string, Value>> = drawn.given;
	const number = (...keys: string[]) =>
		keys.map((key) => given[key] ?? right[key]).find((value) => typeof value === 'number');
	const toldAs = (label: RegExp) => told.find(([name]) => label.test(name))?.[1];
	const numbered = partNumberIn(String(given.number ?? toldAs(/^rivets?$/i) ?? ''));
	const alloy = given.alloy ?? toldAs(/^(material|sheet)$/i);
	const job = {
		layers: layersIn(given.layers, labels.layers),
		D: number('D', 'diameter') ?? numbered?.D,
		// A rivet out of the bin is of any length that is stocked; one for a joint goes with its sheets.
		length: /^rivet-number/.test(family.id) ? undefined : numbered?.length,
		letters: toldAs(/letters/i) ?? numbered?.letters ?? lettersIn(given.alloy),
		alloy: alloy === undefined ? undefined : /\d{4}(-\w+)?/.exec(String(alloy))?.[0],
		heatTreated: toldAs(/^(material|sheet)$/i)?.includes('heat treated'),
		inTwo: /still goes in/.test(story) ? undefined : inTwoIn(family.id, drawn.asked, right),
		T: number('T', 'thickest'),
		bend: family.topic === 'bends' ? bendOf(given.angles ?? number('angle')) : undefined,
		clamped: family.topic === 'bends' ? number('tangentLine') : undefined,
		remnant: drawn.asked.includes('remnant') ? number('remnant') : undefined,
		blanks: blanksOf(given),
		weight: number('weight')
	};
	const known = Object.entries(job).filter(([, value]) => value !== undefined);
	return { story, cautions, ...Object.fromEntries(known) };
}

/** The fraction drill below and the size called out, where a hole is drilled in two. */
function inTwoIn(
	id: string,
	asked: readonly string[],
	right: Readonly<Record<string, Value>>
): Job['inTwo'] {
	const isDrilled = id === 'drill-size' && asked.join() === 'size,under';
	return isDrilled ? [Number(right.under), Number(right.size)] : undefined;
}

/** Blanks of a sheet by area. */
function blanksOf(given: Readonly<Record<string, Value>>): Job['blanks'] {
	const [length, width, one, other] = [
		'sheetLength',
		'sheetWidth',
		'pieceLength',
		'pieceWidth'
	].map((key) => Number(given[key]));
	if (!length || !width || !one || !other) return undefined;
	return (length * width) / (one * other);
}

/** The closest bend of a part, degrees from flat. */
function bendOf(angles: Value | undefined): number | undefined {
	if (Array.isArray(angles)) return Math.max(...angles.map(Number));
	return typeof angles === 'number' ? angles : undefined;
}

function layersIn(
	layers: Value | undefined,
	names: string | readonly string[] | undefined
): readonly Layer[] | undefined {
	if (!Array.isArray(layers)) return undefined;
	return layers.map(Number).map((T, i) => ({
		name: typeof names === 'object' ? (names[i] ?? '') : (names ?? ''),
		T
	}));
}

interface Numbered {
	readonly D: number;
	readonly letters: string;
	readonly length?: number;
}

function partNumberIn(text: string): Numbered | undefined {
	const bare = /^((?:MS20|AN)\d{3}[A-Z]+\d+)(-[\d.]+)?$/.exec(text);
	if (!bare) return undefined;
	const { alloy, diameterDash, lengthDash } = rivetNumberParts(bare[2] ? text : `${text}-4`);
	const size = { D: diameterDash / 32, letters: lettersOf(alloy) };
	return bare[2] ? { ...size, length: lengthDash / 16 } : size;
}

/** Letters of a rivet alloy; sheet alloys have none. */
function lettersIn(alloy: Value | undefined): string | undefined {
	return typeof alloy === 'string' && /^(1100|2117|5056|2017|2024)$/.test(alloy)
		? lettersOf(alloy)
		: undefined;
}
