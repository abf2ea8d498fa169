import type { PanelPlan } from '$lib/engine/panel/plan.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { writeDxf } from '$lib/exchange/panel/dxf.ts';
import { writeSvg } from '$lib/exchange/panel/svg.ts';
import { writePanelCsv } from '$lib/exchange/panel/tables.ts';
import { download } from '$lib/ui/download.ts';
import type { PanelFile } from '$lib/ui/panel/panel-files.ts';

/**
 * Hands the person a file of the panel.
 *
 * @param file the panel file as text
 * @param units what tables are in
 */
export function savePanelFile(
	plan: PanelPlan,
	kind: PanelFile,
	file: string,
	units: LengthUnit
): void {
	const name = plan.job.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'panel';
	switch (kind) {
		case 'dxf':
			return download(`${name}.dxf`, 'image/vnd.dxf', writeDxf(plan));
		case 'svg':
			return download(`${name}.svg`, 'image/svg+xml', writeSvg(plan));
		case 'json':
			return download(`${name}.json`, 'application/json', file);
		default:
			return download(`${name}-${kind}.csv`, 'text/csv', writePanelCsv(plan, kind, units));
	}
}
