import type { PanelPlan } from '$lib/engine/panel/plan.ts';
import { counted } from '../counted.ts';
import type { Writer } from './writer.ts';

/** What comes out, in one line. */
export function headline({ holes, blank, stock, weight }: PanelPlan, write: Writer): string {
	const size = `${write.bare(blank.length)} × ${write.size(blank.width)}`;
	return [
		counted(holes.length, 'hole'),
		stock
			? `blank ${size}, ${stock.count} from a ${write.bare(stock.sheet.width)} × ${write.size(stock.sheet.length)} sheet${stock.turned ? ', laid across it' : ''}`
			: `blank ${size}`,
		...(weight === null
			? []
			: [
					write.units === 'mm'
						? `panel ${(weight * 0.45359237).toFixed(2)} kg`
						: `panel ${weight.toFixed(2)} lb`
				])
	].join(' · ');
}
