import { type Drawing, path, type Shape, text } from '../../figures/drawing.ts';
import type { Checkup } from '../check.ts';
import { legend, sizeText, spotsOf, toneOf, verdictMark } from './spots.ts';

/** Bends in section to scale: the sheet as measured, dashed the sharpest inside that is allowed. */
export function bendRadii(checkup: Checkup, width: number, T: number): Drawing {
	const spots = spotsOf(checkup, 'Inside radius');
	const perRow = Math.max(1, Math.min(spots.length, Math.floor(width / 110)));
	const apart = width / perRow;
	const largest = Math.max(...spots.map((one) => Math.max(one.value, one.least?.bound ?? 0))) + T;
	const scale = Math.min(apart - 50, 90) / (largest * 1.6);
	const rowHeight = largest * 1.6 * scale + 54;
	const shapes = spots.flatMap((spot, i): Shape[] => {
		const x = ((i % perRow) + 0.5) * apart - (largest * 0.8 * scale) / 2;
		const y = Math.floor(i / perRow) * rowHeight;
		const line = spot.verdict === 'fails' ? 'slip' : 'edge';
		const arm = largest * 1.6 * scale;
		const limit = spot.least
			? [path(inside(x, y, spot.least.bound * scale, T * scale, arm), 'hidden')]
			: [];
		return [
			path(section(x, y, spot.value * scale, T * scale, arm), line, 'metal-a'),
			...limit,
			text(x + arm / 2 - 12, y + 18, spot.name || '1', {
				anchor: 'end',
				tone: toneOf(spot.verdict)
			}),
			...verdictMark(x + arm / 2, y + 14, spot.verdict),
			text(x + arm / 2 + 10, y + 18, `R ${sizeText(spot.value, checkup.units)}`, {
				tone: toneOf(spot.verdict)
			})
		];
	});
	const rows = Math.ceil(spots.length / perRow);
	return {
		title: `${spots.length} bends in section to scale, the sharpest inside radius allowed dashed.`,
		shapes: [...shapes, ...legend(8, (rows - 1) * rowHeight + 46)]
	};
}

/** The bend with its outer corner at (x, y); legs go up and to the right. */
export function section(x: number, y: number, R: number, T: number, arm: number): string {
	const outer = R + T;
	return [
		`M${r(x)} ${r(y - arm)}L${r(x)} ${r(y - outer)}A${r(outer)} ${r(outer)} 0 0 0 ${r(x + outer)} ${r(y)}L${r(x + arm)} ${r(y)}`,
		`L${r(x + arm)} ${r(y - T)}L${r(x + outer)} ${r(y - T)}A${r(R)} ${r(R)} 0 0 1 ${r(x + T)} ${r(y - outer)}L${r(x + T)} ${r(y - arm)}Z`
	].join('');
}

function inside(x: number, y: number, R: number, T: number, arm: number): string {
	const outer = R + T;
	return `M${r(x + T)} ${r(y - arm)}L${r(x + T)} ${r(y - outer)}A${r(R)} ${r(R)} 0 0 0 ${r(x + outer)} ${r(y - T)}L${r(x + arm)} ${r(y - T)}`;
}

function r(value: number): number {
	return Math.round(value * 100) / 100;
}
