import { rivetDiameterFromStack } from '../../methods/rivet-diameter-from-stack.ts';
import { rivetLength } from '../../methods/rivet-length.ts';
import { fraction } from '../../quantity/kinds.ts';
import { evaluate } from '../../solver/evaluate.ts';
import type { Method } from '../../solver/method.ts';
import { type Draw, family, type OtherDraw } from '../family.ts';
import type { Random } from '../random.ts';
import { panelRivets, panelRows, panelTwoStacks } from './parts/joined.ts';
import { doubledPanels, type PanelStory, plainPanels } from './parts/panels.ts';
import { panelFigure } from './parts/panel-figure.ts';
import { panelMetal } from './parts/panel-metal.ts';

const method: Method = panelRivets;

/** Skins of light aircraft and what they are riveted to, inches; their rivets are 3/32 to 5/32 in. */
const sheets = [0.02, 0.025, 0.032, 0.04, 0.05] as const;

const alloys = ['2024-T3', 'clad 2024-T3', '6061-T6'] as const;

const basis = {
	rivets: 'Smallest rivet by 3T, 1.5D for the shop head (FAA-H-8083-31B, p. 4-32).',
	rows: 'Smallest rivet by 3T, 1.5D for the shop head, end holes at the preferred edge distance, the fewest equal spaces (FAA-H-8083-31B, pp. 4-32 to 4-35).'
};

const chiefOfRivets = {
	threeT: ['wholeStack'],
	diameter: ['diameter.down'],
	needed: ['oneLayer', 'noShank'],
	length: ['length.down'],
	final: ['nominal', 'rowAbove', 'rowBelow'],
	total: ['oneRow']
};

const chiefOfRows = {
	...chiefOfRivets,
	preferred: ['nothingAdded'],
	count: ['noMargin', 'spacesForRivets', 'spacesDown'],
	pitch: ['pitchNotDivided', 'byRivets', 'wholeLength']
};

const chiefOfTwo = {
	...chiefOfRows,
	needed: ['grip.oneLayer', 'needed.noShank'],
	length: ['length.down'],
	lengthB: ['neededB.noShank', 'lengthB.down']
};

/**
 * 3T and the length needed are asked beside the sizes that they lead to: of the stocked sizes alone
 * nobody can tell which of two mistakes led there.
 */
const rivetFields = ['threeT', 'diameter', 'needed', 'length'] as const;

const rowFields = ['preferred', 'count', 'pitch', 'total'] as const;

export const tasks = family({
	method,
	others: [panelRows, panelTwoStacks],
	draw(random, level): Draw | OtherDraw {
		if (level === 1) return rivetsOnly(random);
		return level === 2 ? wholeRows(random) : twoStacks(random);
	},
	figure: panelFigure,
	metal: panelMetal
});

/** The rivet, its drill and how many of it: the rows are laid out already. */
function rivetsOnly(random: Random): Draw {
	const panel = random.pick(plainPanels);
	const layers = stackFor(random, panel);
	return {
		given: { layers, rows: random.int(...panel.rows), count: random.int(7, 19) },
		story: `${panel.story} The holes are marked.`,
		question: 'Which rivet, which final drill, and how many rivets?',
		asked: [...rivetFields, 'final', 'total'],
		chief: chiefOfRivets,
		basis: basis.rivets,
		...told(random, panel, layers)
	};
}

/** One stack and its rows, from the rivet to the pitch. */
function wholeRows(random: Random): OtherDraw {
	const panel = random.pick(plainPanels);
	const layers = stackFor(random, panel);
	return {
		method: panelRows,
		given: { layers, head: 'protruding', ...rowsOf(random, panel, layers) },
		story: panel.story,
		question: 'Work the panel through: rivet, drill, edge distance and rows.',
		asked: [...rivetFields, 'final', ...rowFields],
		chief: chiefOfRows,
		basis: basis.rows,
		...told(random, panel, layers)
	};
}

/** Rows that run through a doubler for a part of their length: one diameter, two lengths. */
function twoStacks(random: Random): OtherDraw {
	const panel = random.pick(doubledPanels);
	const layers = stackFor(random, panel);
	const layersB = layers.slice(1);
	// A doubler so thin that one length serves both stacks would ask nothing of the second.
	const D = diameterFor(layers);
	if (lengthFor(layers, D) === lengthFor(layersB, D)) return twoStacks(random);
	return {
		method: panelTwoStacks,
		given: {
			layers,
			layersB,
			head: 'protruding',
			...rowsOf(random, panel, layers)
		},
		story: panel.story,
		question: 'Work the panel through both stacks: rivets, drills, edge distance and rows.',
		asked: [...rivetFields, 'lengthB', 'final', ...rowFields],
		chief: chiefOfTwo,
		basis: basis.rows,
		...told(random, panel, layers)
	};
}

/**
 * Gauges for the layers: what is behind a skin is not much thinner or thicker, and a doubler as thick as the skin
 * it lies on, or up to two gauges thicker.
 */
function stackFor(
	random: Random,
	{ layers: names, least = 0, most = Infinity }: PanelStory
): readonly number[] {
	const skin = random.pick(sheets.filter((T) => T >= least && T <= most));
	const doubler =
		names.length === 2 ? [] : [random.pick(sheets.filter((T) => T >= skin && T <= 1.6 * skin))];
	const front = [...doubler, skin];
	const behind = sheets.filter(
		(T) => T >= 0.6 * skin && 2 * T >= Math.max(...front) && T <= 2 * skin
	);
	return [...front, random.pick(behind)];
}

function diameterFor(layers: readonly number[]): number {
	return Number(evaluate(rivetDiameterFromStack, { layers }).diameter);
}

function lengthFor(layers: readonly number[], D: number): number {
	return Number(evaluate(rivetLength, { layers, D }).length);
}

/** Rows between two edges of the panel, in quarters of an inch. */
function rowsOf(random: Random, { rows }: PanelStory, layers: readonly number[]) {
	const D = diameterFor(layers);
	return {
		rowLength: random.int(32, 96) / 4,
		greatestPitch: random.pick(pitches.filter(fits(D))),
		rows: random.int(...rows)
	};
}

const pitches = [0.75, 0.875, 1, 1.125, 1.25, 1.5] as const;

/** Pitches from 4 D, the low end of the average, to 10 D, the maximum. */
function fits(D: number) {
	return (pitch: number) => pitch >= 4 * D - 1e-9 && pitch <= 10 * D + 1e-9;
}

/** Widths of flanges, inches. */
const flanges = [5 / 8, 3 / 4, 7 / 8, 1] as const;

/** Whether a row in the middle of a flange keeps the preferred and the maximum edge distance to it. */
function fitsInMiddle(width: number, D: number): boolean {
	return width / 2 >= 2 * D + 1 / 16 - 1e-9 && width / 2 <= 4 * D + 1e-9;
}

/** What is told of a panel; its layers, where there are two stacks, by the place they lie at. */
function told(
	random: Random,
	{ layers, behind: [one, many] }: PanelStory,
	stack: readonly number[]
) {
	const D = diameterFor(stack);
	const flange = random.pick(flanges.filter((width) => fitsInMiddle(width, D)));
	const at = (names: readonly string[], place: string) =>
		names.map((name) => `${name} at ${place}`);
	return {
		labels: {
			rows: many,
			head: 'Rivet head',
			layers: layers.length > 2 ? at(layers, 'A') : layers,
			layersB: at(layers.slice(1), 'B'),
			rowLength: 'Panel along each row'
		},
		told: [
			['Sheet', random.pick(alloys)] as const,
			['Rivets', 'MS20470AD'] as const,
			[`Flange of a ${one}`, `${fraction.write(flange, 'in')}, row in the middle`] as const
		],
		cautions: ['drill', 'drive'] as const
	};
}
