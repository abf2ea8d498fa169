import { hundredths } from '../../quantity/kinds.ts';
import { otherwise, outcome, shown, when } from '../../solver/write.ts';
import { thousandths } from '../../trade/tolerances.ts';
import { nearRight } from './near-right.ts';

interface HeadSize {
	readonly key: string;
	/** The limits and what is aimed for, in D, by Fig. 4-76 of the airframe handbook. */
	readonly least: number;
	readonly wanted: number;
	readonly most: number;
	/** How the size lies: `across`. */
	readonly lies: string;
}

/** How a size of the shop head compares with its limits. */
export function headSize({ key, least, wanted, most, lies }: HeadSize) {
	const near = (limit: number) => `abs(${key} - ${limit} * D) <= ${thousandths.amount} in`;
	const at = `{${key}} is {times} D ${lies}`;
	return outcome(
		[key],
		{
			// Rounded away from the size wanted, so that a hair off is not told as on it.
			times: shown(
				`${key} < ${wanted} * D ? downTo(${key} / D, 0.01) : upTo(${key} / D, 0.01)`,
				hundredths
			)
		},
		{
			aim: when(
				nearRight(key, thousandths),
				`{${key}} is ${wanted} D ${lies}, the size to aim for.`
			),
			least: when(
				near(least),
				`{${key}} is ${least} D ${lies}, the least allowed, not the size to aim for.`
			),
			most: when(
				near(most),
				`{${key}} is ${most} D ${lies}, the most allowed, not the size to aim for.`
			),
			under: when(`${key} < ${least} * D`, `${at}, under the least of ${least} D.`),
			over: when(`${key} > ${most} * D`, `${at}, over the most of ${most} D.`),
			allowed: otherwise(`${at}: allowed, but not the size to aim for.`)
		}
	);
}
