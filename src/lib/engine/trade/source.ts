import type { DocumentId } from './documents.ts';

/**
 * How far a fact can be trusted.
 *
 * - `read`: the figure was read in a public copy of the document named
 * - `quoted`: read second-hand, in a transcription or quotation of it
 * - `practice`: common shop practice; no document was found that prints it
 * - `memory`: remembered and not checked; never keyed, only given in a task
 * - `worked`: follows from the other rules by arithmetic or geometry
 */
export type Standing = 'read' | 'quoted' | 'practice' | 'memory' | 'worked';

/** Where a fact stands: document and place in it, and how far the reading can be trusted. */
export interface Source {
	readonly document: DocumentId;
	/** Chapter, page, figure or table. */
	readonly at: string;
	readonly standing: Standing;
}

export function source(document: DocumentId, at: string, standing: Standing = 'read'): Source {
	return { document, at, standing };
}
