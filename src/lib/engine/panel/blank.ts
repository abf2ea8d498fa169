import { blankSize } from '../methods/blank-size.ts';
import { piecesPerSheet } from '../methods/pieces-per-sheet.ts';
import { sheetWeight } from '../methods/sheet-weight.ts';
import { evaluate } from '../solver/evaluate.ts';
import { TradeError } from '../solver/trade-function.ts';
import type { Flat } from './bent-edges.ts';
import type { PanelJob, Problem, StockSheet } from './job.ts';
import { openArea } from './open-area.ts';
import { numberAt, worked } from './rivets.ts';
import { inchesText } from './write.ts';

/** The sheet as it is cut, before bending and trimming. Inches. */
export interface Blank {
	readonly length: number;
	readonly width: number;
	readonly trim: number;
	/** Without trim: as long and wide as the bends take. */
	readonly developed: { readonly length: number; readonly width: number };
	/** What a place on the panel has added on the blank, from its lower left corner. */
	readonly origin: { readonly x: number; readonly y: number };
	/** Bend tangent lines on the blank: x of those that run up, y of those that run along. */
	readonly bendLines: { readonly x: readonly number[]; readonly y: readonly number[] };
}

export function blankOf(job: PanelJob, { along, across }: Flat): Blank {
	const { trim } = job;
	const values = evaluate(blankSize, {
		finishedLength: along.size,
		finishedWidth: across.size,
		trimmedEnds: 2,
		endTrim: trim,
		trimmedEdges: 2,
		edgeTrim: trim
	});
	const lines = ({ bends }: Flat['along']) => bends.flat().map((one) => one + trim);
	return {
		length: numberAt(values, 'blankLength'),
		width: numberAt(values, 'blankWidth'),
		trim,
		developed: { length: along.size, width: across.size },
		origin: { x: trim + along.shift, y: trim + across.shift },
		bendLines: { x: lines(along), y: lines(across) }
	};
}

/** Square inches of the finished panel, flat: without trim, openings and the corners between bends. */
export function areaOf(job: PanelJob, { along, across }: Flat): number {
	const corners = (along.strips[0] + along.strips[1]) * (across.strips[0] + across.strips[1]);
	const bent = job.bends.length > 0;
	const round = bent ? 0 : (4 - Math.PI) * job.cornerRadius ** 2;
	return along.size * across.size - corners - round - openArea(job);
}

/** Pounds of so many square inches; null where the density of the alloy is not known. */
export function weightOf(
	area: number,
	{ thickness, alloy }: Pick<PanelJob, 'thickness' | 'alloy'>,
	problems: Problem[]
): number | null {
	if (thickness === null) return null;
	try {
		return worked(sheetWeight, { length: area, width: 1, T: thickness, alloy }, 'weight');
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
		problems.push({ field: 'panel.alloy', says: `Panel, alloy: ${error.message}` });
		return null;
	}
}

/** The blank in the lower left corner of a stock sheet. */
export interface OnStock {
	readonly sheet: StockSheet;
	/** Whether its length lies across the sheet. */
	readonly turned: boolean;
	/** Blanks of this size that the sheet holds, all laid this way. */
	readonly count: number;
}

/**
 * The smallest stock sheet that holds the blank. Grain runs along a stock sheet, and bend lines lie
 * across it, so a blank with bends is not turned.
 */
export function onStock(job: PanelJob, blank: Blank, problems: Problem[]): OnStock | null {
	const turned = mustTurn(job, problems);
	const sheets = [...job.stock].sort((a, b) => a.length * a.width - b.length * b.width);
	for (const sheet of sheets) {
		const values = evaluate(piecesPerSheet, {
			sheetLength: sheet.length,
			sheetWidth: sheet.width,
			pieceLength: blank.length,
			pieceWidth: blank.width,
			kerf: job.kerf
		});
		const [straight, cross] = [numberAt(values, 'lengthwise'), numberAt(values, 'crosswise')];
		const isTurned = turned ?? cross > straight;
		const count = isTurned ? cross : straight;
		if (count >= 1) return { sheet, turned: isTurned, count };
	}
	const way = turned === null ? 'either way' : 'with its bends across the grain';
	problems.push({
		field: 'stock',
		says: `The blank, ${inchesText(blank.length)} by ${inchesText(blank.width)}, fits no stock sheet ${way}; take a larger sheet.`
	});
	return null;
}

/** Which way the bends ask for; null where it may lie either way. */
function mustTurn({ bends }: PanelJob, problems: Problem[]): boolean | null {
	const up = bends.some(({ edge }) => edge === 'left' || edge === 'right');
	const across = bends.some(({ edge }) => edge === 'bottom' || edge === 'top');
	if (up && across) {
		problems.push({
			field: 'bends',
			says: 'Edges are bent both ways, so not every bend line can lie across the grain: ask which may lie along it.'
		});
	}
	return up === across ? null : across;
}
