import type { Band, Calibration } from '$lib/engine/schedule/calibration.ts';
import { enoughAnswers, worth } from '$lib/engine/schedule/calibration.ts';
import { counted } from '../counted.ts';
import { percent } from '../percent.ts';

/** How far the expectations can be trusted, in words: the finding first, then its grounds. */
export function trustWords(calibration: Calibration): string[] {
	const { average, loss, baseline, auc, count } = calibration;
	return [
		findings[worth(calibration)],
		`${exampleOf(calibration.bands)} Looked at: ${counted(count, 'first answer')} on steps met before.`,
		`Log loss, a penalty for misplaced confidence: ${loss.toFixed(3)}. Always saying your average, ${percent(average)}, would cost ${baseline.toFixed(3)}. Lower is better, and the average has a head start: it is known only afterwards.`,
		auc === null
			? 'All your answers came out alike, so there is nothing to tell apart yet.'
			: `AUC ${auc.toFixed(2)}: of one answer you got right and one you did not, Bucktail had expected more of the right one ${Math.round(auc * 100)} times in 100. Guessing gives 50.`
	];
}

const findings = {
	better: 'So far these numbers tell more about your answers than your plain average does.',
	even: 'So far these numbers are no better than your plain average. Take them as a rough guide.',
	worse:
		'So far your plain average would have been closer than these numbers. Do not lean on them yet.'
} as const;

/** The tenth of expectations with the most answers, as an example. */
function exampleOf(bands: readonly Band[]): string {
	const most = bands.reduce<Band | undefined>(
		(best, band) => (band.count > (best?.count ?? 0) ? band : best),
		undefined
	);
	if (!most) return '';
	return `When Bucktail expected about ${percent(most.expected)}, you got ${percent(most.right)}.`;
}

/** What is said while there are too few answers to judge. */
export function waitWords(count: number): string {
	const missing = counted(enoughAnswers - count, 'more first answer');
	return `After ${missing} on steps you have met before, this shows whether what was expected came true.`;
}
