import type { KnownEvent } from './event.ts';
import type { PanelEvent, Stage } from './panel-events.ts';

/** A panel as the log tells of it. */
export interface SavedPanel {
	readonly id: string;
	/** The panel file, as text. */
	readonly file: string;
	/** Holes that are done, by stage, as `x y` in inches. */
	readonly done: Readonly<Record<Stage, ReadonlySet<string>>>;
}

export function isPanelEvent(event: { readonly type: string }): event is PanelEvent {
	return event.type === 'panel' || event.type === 'panel-tick';
}

/** The panels of a log, the one last changed first. */
export function panelsOf(events: readonly KnownEvent[]): SavedPanel[] {
	const files = new Map<string, string>();
	const done = new Map<string, Record<Stage, Set<string>>>();
	for (const event of events) {
		if (!isPanelEvent(event)) continue;
		if (event.type === 'panel') {
			// Taken out first, so that the one last changed stands last.
			files.delete(event.panel);
			if (event.file) files.set(event.panel, event.file);
			continue;
		}
		const own = done.get(event.panel) ?? nothingDone();
		done.set(event.panel, own);
		for (const hole of event.holes) {
			if (event.done) own[event.stage].add(hole);
			else own[event.stage].delete(hole);
		}
	}
	return [...files]
		.map(([id, file]) => ({ id, file, done: done.get(id) ?? nothingDone() }))
		.reverse();
}

export function nothingDone(): Record<Stage, Set<string>> {
	return {
		mark: new Set(),
		pilot: new Set(),
		final: new Set(),
		deburr: new Set(),
		drive: new Set()
	};
}
