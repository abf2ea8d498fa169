import { type LayoutLayer, type LayoutShape, layoutOf } from '../../engine/panel/layout.ts';
import type { PanelPlan } from '../../engine/panel/plan.ts';

/** Room round the panel, inches. */
const room = 0.5;

const looks: Readonly<Record<LayoutLayer, string>> = {
	PANEL: 'fill="none" stroke="#000" stroke-width="0.02"',
	CUTOUTS: 'fill="none" stroke="#000" stroke-width="0.02"',
	DOUBLERS: 'fill="none" stroke="#000" stroke-width="0.01" stroke-dasharray="0.06 0.03"',
	MEMBERS: 'fill="none" stroke="#000" stroke-width="0.01" stroke-dasharray="0.12 0.06"',
	BENDS: 'fill="none" stroke="#000" stroke-width="0.01" stroke-dasharray="0.2 0.05"',
	ROWS: 'fill="none" stroke="#000" stroke-width="0.006" stroke-dasharray="0.25 0.05 0.05 0.05"',
	HOLES: 'fill="none" stroke="#000" stroke-width="0.01"'
};

/**
 * The layout at full size, as a picture of its own. Inside the group, places are the plan's: inches
 * from the lower left corner, y up.
 */
export function writeSvg(plan: PanelPlan): string {
	const { name, length, width } = plan.job;
	const [wide, high] = [length + 2 * room, width + 2 * room];
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" width="${wide}in" height="${high}in" viewBox="${-room} ${-room} ${wide} ${high}">`,
		`<title>${escaped(name)}, full size</title>`,
		`<g transform="matrix(1 0 0 -1 0 ${width})">`,
		...layoutOf(plan).map(shapeText),
		'</g>',
		'</svg>'
	].join('\n');
}

/** One shape as SVG, in the plan's own places. */
export function shapeText(shape: LayoutShape): string {
	const { layer, name } = shape;
	const look = `class="${layer.toLowerCase()}" data-name="${escaped(name)}" ${looks[layer]}`;
	switch (shape.kind) {
		case 'area':
			return `<rect x="${shape.x}" y="${shape.y}" width="${shape.length}" height="${shape.width}" rx="${shape.radius}" ${look}/>`;
		case 'circle':
			return `<circle cx="${shape.x}" cy="${shape.y}" r="${shape.radius}" ${look}/>`;
		case 'line':
			return `<line x1="${shape.x}" y1="${shape.y}" x2="${shape.x2}" y2="${shape.y2}" ${look}/>`;
		default:
			return shape satisfies never;
	}
}

function escaped(text: string): string {
	return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
