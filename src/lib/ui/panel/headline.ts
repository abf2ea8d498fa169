import type { PanelPlan } from '$lib/engine/panel/plan.ts';
import { inchesText } from '$lib/engine/panel/write.ts';
import { counted } from '../counted.ts';

/** What comes out, in one line. */
export function headline({ holes, blank, stock, weight }: PanelPlan): string {
	const size = `${inchesText(blank.length).replace(' in', '')} × ${inchesText(blank.width)}`;
	return [
		counted(holes.length, 'hole'),
		stock
			? `blank ${size}, ${stock.count} from a ${stock.sheet.width} × ${stock.sheet.length} in sheet${stock.turned ? ', laid across it' : ''}`
			: `blank ${size}`,
		...(weight === null ? [] : [`panel ${weight.toFixed(2)} lb`])
	].join(' · ');
}
