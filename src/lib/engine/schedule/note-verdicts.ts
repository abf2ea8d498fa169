import type { Verdict, Verdicts } from '../marking/verdict.ts';
import type { Attempt } from './event.ts';

/** Verdicts as an attempt keeps them. */
export function noteVerdicts(verdicts: Verdicts): Attempt['verdicts'] {
	const noted: Attempt['verdicts'] = {};
	for (const [key, verdict] of Object.entries(verdicts)) {
		const note = noteVerdict(verdict);
		if (note) noted[key] = note;
	}
	return noted;
}

/** One that was not read is no part of the attempt. */
function noteVerdict(verdict: Verdict): Attempt['verdicts'][string] | null {
	switch (verdict.kind) {
		case 'accept':
			return verdict;
		case 'unread':
			return null;
		case 'holds':
			// As rework, which every version of the log reads.
			return { kind: 'rework', cause: 'not-best', slips: [] };
		case 'rework': {
			const { cause } = verdict;
			const slips = 'slips' in cause ? [...cause.slips] : [];
			return { kind: 'rework', cause: cause.kind, slips };
		}
		default:
			return verdict satisfies never;
	}
}
