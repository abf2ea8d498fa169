import type { Verdicts } from '../marking/verdict.ts';
import type { Attempt } from './event.ts';

/** Verdicts as an attempt keeps them. */
export function noteVerdicts(verdicts: Verdicts): Attempt['verdicts'] {
	return Object.fromEntries(
		Object.entries(verdicts).map(([key, verdict]) => {
			if (verdict.kind === 'accept') return [key, verdict];
			// As rework, which every version of the log reads.
			if (verdict.kind === 'holds') return [key, { kind: 'rework', cause: 'not-best', slips: [] }];
			const { cause } = verdict;
			return [
				key,
				{ kind: 'rework', cause: cause.kind, slips: 'slips' in cause ? [...cause.slips] : [] }
			];
		})
	);
}
