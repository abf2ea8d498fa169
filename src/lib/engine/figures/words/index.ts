import type { Drawing } from '../drawing.ts';
import { bends } from './bends.ts';
import { joints } from './joints.ts';

const drawn = { ...joints, ...bends };

/** What makes a small drawing of what a word names; null where there is nothing to be drawn of it. */
export function wordDrawing(name: string): (() => Drawing) | null {
	const draw = drawn[name];
	return draw ? () => ({ title: `A drawing of the word “${name}”.`, shapes: draw() }) : null;
}

/** The words that have a drawing. */
export const drawnWords: readonly string[] = Object.keys(drawn);
