import { stackHeight, stackSection, setRivet } from '../../../figures/parts/joint.ts';
import { leastStructuralRivet } from '../../../trade/stock.ts';
import type { Drawing, Shape } from '../../../figures/drawing.ts';
import { segment } from '../../../figures/drawing.ts';
import type { Outcome, Say } from '../../family.ts';

const width = 250;
const x = width / 2;

interface StackWanted {
	readonly layers: readonly number[];
	/** The diameter that goes with the stack, inches; drawings keep to its scale. */
	readonly wanted: number;
}

function scaleFor({ layers, wanted }: StackWanted): number {
	return Math.min(150 / (stackHeight(layers, 1) + 2 * wanted), 40 / wanted);
}

/** A stack with the centre line of a rivet whose size is not known yet. */
export function stackWithCentreLine(layers: readonly number[], names: readonly string[]): Drawing {
	const scale = 66 / Math.max(stackHeight(layers, 1), 0.05);
	const bottom = stackHeight(layers, scale);
	return {
		title: `Section through ${layers.length} sheets with the centre line of a rivet.`,
		shapes: [
			...stackSection({ layers, names, width, scale }),
			segment(x, -26, x, bottom + 26, 'centre')
		]
	};
}

/** The stack with a rivet of diameter `D` set in it, and how that compares with the sheets. */
export function diameterOutcome(stack: StackWanted, D: number, say: Say): Outcome {
	const { layers, wanted } = stack;
	const scale = scaleFor(stack);
	const says = `${say('diameter', D)} ${judged(D, Math.max(...layers), wanted)}`;
	const drawn = Math.min(D, 3 * wanted);
	const length = stackHeight(layers, 1) + 1.5 * drawn;
	const rivet: Shape[] = drawn < 1 / 64 ? [] : setRivet(x, drawn, length, scale);
	return {
		drawing: { title: says, shapes: [...stackSection({ layers, width, scale }), ...rivet] },
		says
	};
}

function judged(D: number, thickest: number, wanted: number): string {
	const times = `${(D / thickest).toFixed(1)} times the thickest sheet`;
	if (D < 1 / 64 || Math.abs(D - Math.round(D * 32) / 32) > 0.001) return 'is no rivet size.';
	if (D < leastStructuralRivet) return 'is too small for a part that carries stress.';
	if (D < 2.5 * thickest) return `is only ${times}: the rivets may shear before the sheet tears.`;
	if (D < wanted) return `is only ${times}, less than the rule asks for.`;
	if (D > wanted) return `is ${times}: a larger hole than the joint needs.`;
	return `is ${times}, the smallest rivet for this joint.`;
}
