import { rulesOf } from '../rule.ts';
import { fraction } from '../typed.ts';

interface Given {
	readonly head: string;
	readonly alloy: string;
	readonly D: number;
	readonly length: number;
}

interface Right {
	readonly headNumber: number;
	readonly letters: string;
	readonly diameterDash: number;
	readonly lengthDash: number;
	readonly number: string;
}

const { common, rare } = rulesOf<Given, Right>('rivet-number');

/** FAA-H-8083-31B, ch. 4, Fig. 4-77, and FAA-H-8083-30B, ch. 7, Fig. 7-35. */
const lettersOf: Readonly<Record<string, string>> = {
	'1100': 'A',
	'2117': 'AD',
	'2017': 'D',
	'2024': 'DD',
	'5056': 'B'
};

interface Parts {
	readonly prefix?: string;
	readonly head?: number;
	readonly letters?: string;
	readonly first?: number | string;
	readonly dash?: string;
	readonly second?: number | string;
}

/** A number put together from its parts, those not named as they should be. */
function numbered({ head, alloy, D, length }: Given, parts: Parts = {}): string {
	const { prefix = 'MS20', letters = lettersOf[alloy], dash = '-' } = parts;
	const { head: code = head === 'universal' ? 470 : 426 } = parts;
	const { first = D * 32, second = length * 16 } = parts;
	return `${prefix}${code}${letters}${first}${dash}${second}`;
}

/** The letters of another alloy, for rivets of this one. */
const lettered = (from: string, to: string) => (given: Given) =>
	given.alloy === from ? numbered(given, { letters: to }) : null;

export const rules = [
	rare(
		'lengthDash',
		'the length as it is, in inches',
		({ length }) => fraction(length),
		'lengthInInches'
	),
	common('number', 'the MS left out, as it is said in the shop', (given) =>
		numbered(given, { prefix: '' })
	),
	common(
		'number',
		'the older AN number',
		(given) => numbered(given, { prefix: 'AN' }),
		'olderStandard'
	),
	common('number', 'MS without the 20', (given) => numbered(given, { prefix: 'MS' })),
	common(
		'number',
		'the numbers of the two heads mixed up',
		(given) => numbered(given, { head: given.head === 'universal' ? 426 : 470 }),
		'universalHead',
		'countersunkHead'
	),
	rare(
		'number',
		'430, round, for the universal head',
		(given) => (given.head === 'universal' ? numbered(given, { head: 430 }) : null),
		'roundHead'
	),
	rare(
		'number',
		'425, 78 degrees, for the countersunk head',
		(given) => (given.head === 'countersunk' ? numbered(given, { head: 425 }) : null),
		'narrowHead'
	),
	rare(
		'number',
		'two digits of the head number changed places',
		(given) => numbered(given, { head: given.head === 'universal' ? 407 : 462 }),
		'digits'
	),
	common(
		'number',
		'the two dash numbers changed places',
		(given) =>
			given.D * 32 === given.length * 16
				? null
				: numbered(given, { first: given.length * 16, second: given.D * 32 }),
		'swapped'
	),
	common(
		'number',
		'the length in 32nds, as the diameter is',
		(given) => numbered(given, { second: given.length * 32 }),
		'lengthIn32nds'
	),
	common(
		'number',
		'the diameter in sixteenths, as the length is',
		(given) => numbered(given, { first: given.D * 16 }),
		'diameterIn16ths'
	),
	rare(
		'number',
		'the diameter in 64ths',
		(given) => numbered(given, { first: given.D * 64 }),
		'diameterIn64ths'
	),
	rare(
		'number',
		'the length in eighths',
		(given) =>
			Number.isInteger(given.length * 8) ? numbered(given, { second: given.length * 8 }) : null,
		'lengthIn8ths'
	),
	common('number', 'the dash between the two left out', (given) => numbered(given, { dash: '' })),
	common('number', 'the length as a fraction', (given) =>
		numbered(given, { second: fraction(given.length) })
	),
	rare('number', 'both sizes as fractions', (given) =>
		numbered(given, { first: `-${fraction(given.D)}`, second: fraction(given.length) })
	),
	rare('number', 'the alloy as its number, not its letters', (given) =>
		numbered(given, { letters: `-${given.alloy}-` })
	),
	common('number', 'A for 2117', lettered('2117', 'A'), 'lettersA'),
	common('number', 'D for 2117', lettered('2117', 'D'), 'lettersD'),
	common('number', 'DD for 2017', lettered('2017', 'DD'), 'lettersDD'),
	common('number', 'AD for 2017', lettered('2017', 'AD'), 'lettersAD'),
	common('number', 'D for 2024', lettered('2024', 'D'), 'lettersD'),
	common('number', 'AD for 1100', lettered('1100', 'AD'), 'lettersAD'),
	rare('number', 'B for 1100', lettered('1100', 'B'), 'lettersB'),
	common('number', 'A for 5056', lettered('5056', 'A'), 'lettersA'),
	rare('number', 'AD for 5056', lettered('5056', 'AD'), 'lettersAD'),
	common('number', 'the letters left out', (given) => numbered(given, { letters: '-' })),
	rare('number', 'the letters at the end', (given) =>
		numbered(given, { letters: '-', second: `${given.length * 16}${lettersOf[given.alloy]}` })
	),
	common('number', 'only letters and dash numbers: the head is seen', (given) =>
		numbered(given).slice('MS20470'.length)
	),
	rare('number', 'no length: only head, alloy and diameter', (given) =>
		numbered(given, { dash: '', second: '' })
	),
	rare(
		'number',
		'one length too long: rounded up once more',
		(given) => numbered(given, { second: given.length * 16 + 1 }),
		'lengthOneOver'
	),
	rare(
		'number',
		'the next diameter up',
		(given) => numbered(given, { first: given.D * 32 + 1 }),
		'diameterOneOver'
	),
	rare(
		'number',
		'two mistakes: the other head, and the length in 32nds',
		(given) =>
			numbered(given, {
				head: given.head === 'universal' ? 426 : 470,
				second: given.length * 32
			}),
		'countersunkHead+lengthIn32nds',
		'lengthIn32nds+universalHead'
	),
	rare(
		'number',
		'two mistakes: diameter in sixteenths and length in 32nds',
		(given) => numbered(given, { first: given.D * 16, second: given.length * 32 }),
		'diameterIn16ths+lengthIn32nds'
	),
	rare('number', 'two mistakes: no MS20, and the dash numbers changed places', (given) =>
		given.D * 32 === given.length * 16
			? null
			: numbered(given, { prefix: '', first: given.length * 16, second: given.D * 32 })
	)
];
