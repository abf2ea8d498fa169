import type { OutcomeRow } from './outcome-row.ts';

/*
 * A universal head rivet of 2117, 1/8 by 5/16 in, is MS20470AD4-5 (FAA-H-8083-31B, Figs. 4-75 and
 * 4-77; FAA-H-8083-30B, ch. 7): 470 universal, 426 countersunk, AD 2117, D 2017, 32nds, then 16ths.
 */

const given = { head: 'universal', alloy: '2117', D: 1 / 8, length: 5 / 16 };

function called(entered: string, told: string, says: string): OutcomeRow {
	return { given, key: 'number', entered, case: told, says };
}

export const rows: OutcomeRow[] = [
	called(
		'MS20470AD4-5',
		'handedOut',
		'MS20470AD4-5 is a universal head rivet of 2117, 1/8 in by 5/16 in: the rivet wanted.'
	),
	called(
		'AN470AD4-5',
		'older',
		'AN470AD4-5 is the older number of the rivet wanted; write the number that begins with MS20.'
	),
	called(
		'AN470AD4-6',
		'other',
		'AN470AD4-6 is a universal head rivet of 2117, 1/8 in by 3/8 in: not the rivet wanted.'
	),
	called(
		'MS20470AD5-4',
		'other',
		'MS20470AD5-4 is a universal head rivet of 2117, 5/32 in by 1/4 in: not the rivet wanted.'
	),
	called(
		'MS20426AD4-5',
		'other',
		'MS20426AD4-5 is a countersunk head rivet of 2117, 1/8 in by 5/16 in: not the rivet wanted.'
	),
	called(
		'MS20470D4-5',
		'other',
		'MS20470D4-5 is a universal head rivet of 2017, 1/8 in by 5/16 in: not the rivet wanted.'
	),
	called(
		'MS20470AD5-5',
		'other',
		'MS20470AD5-5 is a universal head rivet of 2117, 5/32 in by 5/16 in: not the rivet wanted.'
	),
	called(
		'MS20470AD4-6',
		'other',
		'MS20470AD4-6 is a universal head rivet of 2117, 1/8 in by 3/8 in: not the rivet wanted.'
	)
];
