import type { Shape } from '../drawing.ts';
import { boundsOf } from '../to-svg.ts';
import { wordDrawing } from './index.ts';

/** The word of the trade that the work of a family is recognised by. */
const words: Readonly<Record<string, string>> = {
	'rivet-diameter': 'rivet diameter',
	'rivet-diameter-from-stack': '3T',
	'rivet-length': 'shank',
	'shop-head': 'drive',
	'shop-head-check': 'shop head',
	'rivet-number': 'rivet',
	'rivet-number-reading': 'countersunk head',
	'edge-distance': 'edge distance',
	'rivet-row': 'pitch',
	'lap-width': 'lap',
	'blank-size': 'trim',
	'pieces-per-sheet': 'blank',
	'bar-pieces': 'remnant',
	'sheet-weight': 'stack',
	setback: 'setback',
	'setback-from-legs': 'bend angle',
	'bend-allowance': 'bend allowance',
	'developed-width': 'developed width',
	'sight-line': 'sight line',
	'finished-leg': 'leg',
	'least-bend-radius': 'inside radius',
	'drill-for-rivet': 'pilot hole',
	'drill-size': 'final drill',
	'removal-drill': 'universal head',
	'rivets-each-side': 'break',
	'whole-panel': 'patch'
};

/** A small picture of the work of a family, without lettering, and the view box round it. */
export function pictureOf(family: string): { shapes: Shape[]; view: string } | null {
	const draw = wordDrawing(words[family] ?? '');
	if (!draw) return null;
	const shapes = draw().shapes.filter(({ kind }) => kind === 'path');
	const { left, top, right, bottom } = boundsOf(shapes);
	const margin = (right - left) / 30 + 1;
	const view = [left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin];
	return { shapes, view: view.map((n) => n.toFixed(1)).join(' ') };
}
