import type { World } from './learner.ts';
import { activation } from './worlds/activation.ts';
import { fsrsLike } from './worlds/fsrs-like.ts';
import { halfLife } from './worlds/half-life.ts';
import { knowledgeTracing } from './worlds/knowledge-tracing.ts';
import { prerequisites } from './worlds/prerequisites.ts';

export const worlds: readonly World[] = [
	fsrsLike,
	halfLife,
	knowledgeTracing,
	activation,
	prerequisites
];
