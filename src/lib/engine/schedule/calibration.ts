/** An answer beside what was expected of it. */
export interface ScoredAnswer {
	/** Expected chance, 0 to 1, that it is right at the first try. */
	readonly expected: number;
	readonly right: boolean;
	/** Number of the check it was part of; the answers of one check follow one another. */
	readonly check: number;
}

/** Answers whose expectations lie close together. */
export interface Band {
	/** The band holds expectations from `from` up to, not including, `to`. */
	readonly from: number;
	readonly to: number;
	readonly count: number;
	/** Mean expectation, 0 to 1. */
	readonly expected: number;
	/** Share that was right. */
	readonly right: number;
}

/** How expectations compare with the answers they were made for, and with a constant average. */
export interface Calibration {
	readonly count: number;
	/** Share of all answers that was right. */
	readonly average: number;
	/** Mean log loss in nats; lower is better. */
	readonly loss: number;
	/** The same for always expecting `average`, which is known only afterwards. */
	readonly baseline: number;
	/** Standard error of `baseline - loss`; the answers of one check count as one observation. */
	readonly error: number;
	/**
	 * Chance that a right answer had been expected more than one that was not right, ties counted
	 * half (area under the ROC curve); null when all came out alike.
	 */
	readonly auc: number | null;
	/** Tenths of expectation that hold any answer, lowest first. */
	readonly bands: readonly Band[];
}

/** Fewer answers than this say too little. */
export const enoughAnswers = 60;

const BANDS = 10;
/** No expectation counts as surer than this, or one surprise would outweigh all else. */
const SUREST = 0.999;

/** @param answers at least one, in the order of the log */
export function calibrate(answers: readonly ScoredAnswer[]): Calibration {
	const count = answers.length;
	const average = answers.filter(({ right }) => right).length / count;
	const gains = answers.map(
		({ expected, right }) => lossOf(average, right) - lossOf(expected, right)
	);
	const baseline = average * lossOf(average, true) + (1 - average) * lossOf(average, false);
	const gain = gains.reduce((sum, one) => sum + one, 0) / count;
	return {
		count,
		average,
		loss: baseline - gain,
		baseline,
		error: errorOfMean(gains, gain, answers),
		auc: areaUnderCurve(answers),
		bands: bandsOf(answers)
	};
}

/** Whether the expectations say more than the average: two standard errors decide. */
export function worth({ loss, baseline, error }: Calibration): 'better' | 'even' | 'worse' {
	const gain = baseline - loss;
	if (Math.abs(gain) <= 2 * error) return 'even';
	return gain > 0 ? 'better' : 'worse';
}

function lossOf(expected: number, right: boolean): number {
	const chance = Math.min(SUREST, Math.max(1 - SUREST, expected));
	return -Math.log(right ? chance : 1 - chance);
}

// The steps of one check come out right or wrong together, so they are not counted as independent.
function errorOfMean(
	gains: readonly number[],
	mean: number,
	answers: readonly ScoredAnswer[]
): number {
	let [squares, sum, check] = [0, 0, answers[0]?.check];
	answers.forEach((answer, i) => {
		if (answer.check !== check) {
			squares += sum ** 2;
			sum = 0;
			check = answer.check;
		}
		sum += (gains[i] ?? mean) - mean;
	});
	return Math.sqrt(squares + sum ** 2) / answers.length;
}

function areaUnderCurve(answers: readonly ScoredAnswer[]): number | null {
	const expectedOf = (wanted: boolean) =>
		Float64Array.from(
			answers.filter(({ right }) => right === wanted),
			({ expected }) => expected
		).sort();
	const rights = expectedOf(true);
	const others = expectedOf(false);
	if (rights.length === 0 || others.length === 0) return null;
	let [wins, below, notAbove] = [0, 0, 0];
	for (const expected of rights) {
		while ((others[below] ?? Infinity) < expected) below++;
		while ((others[notAbove] ?? Infinity) <= expected) notAbove++;
		wins += (below + notAbove) / 2;
	}
	return wins / (rights.length * others.length);
}

function bandsOf(answers: readonly ScoredAnswer[]): Band[] {
	const sums = Array.from({ length: BANDS }, () => ({ count: 0, expected: 0, right: 0 }));
	for (const { expected, right } of answers) {
		const sum = sums[Math.min(BANDS - 1, Math.floor(expected * BANDS))];
		if (!sum) continue;
		sum.count += 1;
		sum.expected += expected;
		if (right) sum.right += 1;
	}
	return sums.flatMap(({ count, expected, right }, i) => {
		if (count === 0) return [];
		const [from, to] = [i / BANDS, (i + 1) / BANDS];
		return [{ from, to, count, expected: expected / count, right: right / count }];
	});
}
