import type { OutcomeRow } from './outcome-row.ts';

/* MS20470AD4-5 is 4/32 in thick and 5/16 in long (FAA-H-8083-31B, p. 4-31, Fig. 4-75). */

function read(key: string, entered: number, told: string, says: string): OutcomeRow {
	return { given: { number: 'MS20470AD4-5' }, key, entered, case: told, says };
}

export const rows: OutcomeRow[] = [
	read('diameter', 1 / 8, 'sized', 'A rivet of 1/8 in diameter: what MS20470AD4-5 stands for.'),
	read('diameter', 0.126, 'sized', 'A rivet of 0.126 in diameter: what MS20470AD4-5 stands for.'),
	read(
		'diameter',
		0.1261,
		'misread',
		'A rivet of 0.1261 in diameter: MS20470AD4-5 stands for another one.'
	),
	read(
		'diameter',
		1 / 4,
		'misread',
		'A rivet of 1/4 in diameter: MS20470AD4-5 stands for another one.'
	),
	read('length', 5 / 16, 'sized', 'A rivet 5/16 in long: what MS20470AD4-5 stands for.'),
	read('length', 0.3115, 'sized', 'A rivet 0.3115 in long: what MS20470AD4-5 stands for.'),
	read('length', 0.3114, 'misread', 'A rivet 0.3114 in long: MS20470AD4-5 stands for another one.'),
	read('length', 5 / 32, 'misread', 'A rivet 5/32 in long: MS20470AD4-5 stands for another one.')
];
