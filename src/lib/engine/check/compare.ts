import { lengthText } from './say.ts';
import type { Checkup, Summary } from './check.ts';

/** A check before this one, and when it was. */
export interface Before {
	readonly checkup: Checkup;
	/** `24 Nov`. */
	readonly when: string;
}

/** How far the values of this try lie apart beside those of one before: `tightened from ±0.04 …`. */
export function compared(now: Checkup, before: Before): string[] {
	return now.summaries.flatMap((summary) => {
		const other = before.checkup.summaries.find(({ what }) => what === summary.what);
		return other ? [sayChange(now, summary, other, before.when)] : [];
	});
}

function sayChange({ units }: Checkup, now: Summary, then: Summary, when: string): string {
	const half = ({ kind, spread }: Summary) => `±${lengthText(kind, spread / 2, units)}`;
	const apart = now.spread - then.spread;
	if (Math.abs(apart) < 5e-4) return `${now.what} stayed at ${half(now)} since ${when}.`;
	const how = apart < 0 ? 'tightened' : 'widened';
	return `${now.what} ${how} from ${half(then)} on ${when} to ${half(now)}.`;
}
