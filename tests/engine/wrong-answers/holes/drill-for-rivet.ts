import { rulesOf, type Typed } from '../rule.ts';
import { bareMillimetres, decimal, fraction, hundredths, off, thousandths } from '../typed.ts';

interface Given {
	readonly D: number;
}

interface Right {
	readonly pilot: number;
	readonly final: number;
	readonly clearance: number;
}

const { common, rare } = rulesOf<Given, Right>('drill-for-rivet');

/** Final drill by rivet, in 32nds: FAA-H-8083-31B, ch. 4, Fig. 4-90. */
const finals = new Map([
	[3, { drill: 'No. 40', size: 0.098 }],
	[4, { drill: 'No. 30', size: 0.1285 }],
	[5, { drill: 'No. 21', size: 0.159 }],
	[6, { drill: 'No. 11', size: 0.191 }],
	[8, { drill: 'F', size: 0.257 }]
]);
const order = [...finals.keys()];

/** The row so many further down; nothing past the ends of the table. */
const rowBeside = ({ D }: Given, rows: number) => {
	const dash = order[order.indexOf(D * 32) + rows];
	const row = dash === undefined ? undefined : finals.get(dash);
	return row && dash !== undefined ? { ...row, dash } : null;
};

/** A drill of its own for each rivet. */
const perRivet =
	(drills: Readonly<Record<number, string>>) =>
	({ D }: Given): string | null =>
		drills[D * 32] ?? null;

/** Pilot and final drill in one check; a right final has its name. */
const both = ({ D }: Given, pilot: string, final?: string | null): Typed | null =>
	final === null ? null : { pilot, final: final ?? finals.get(D * 32)?.drill ?? '' };

/** 3/16 in stands above 1/4 in; the other rivets are 1/32 in apart. */
const smallerPilot = ({ D }: Given): string => (D === 1 / 4 ? 'pilot16thUnder' : 'removalForPilot');

export const rules = [
	common(
		'final',
		'the rivet in a hole of its own size',
		({ D }) => fraction(D),
		'nominal',
		'other-step:pilot'
	),
	common('final', 'the row above', (given) => rowBeside(given, -1)?.drill ?? null, 'rowAbove'),
	common('final', 'the row below', (given) => rowBeside(given, 1)?.drill ?? null, 'rowBelow'),
	common(
		'final',
		'one number too small: it is the next smaller drill in the index',
		perRivet({ 3: '#41', 4: '#31', 5: '#22', 6: '#12', 8: 'E' }),
		'drillUnder',
		({ D }) => (D === 1 / 4 ? 'nominal' : '')
	),
	common(
		'final',
		'one number too large: a higher number is taken for a larger drill',
		perRivet({ 3: '#39', 4: '#29', 5: '#20', 6: '#10', 8: 'G' }),
		'drillOver'
	),
	rare('final', 'the next 64th up', ({ D }) => fraction(D + 1 / 64), 'sixtyFourthOver'),
	rare('final', 'the next 32nd up', ({ D }) => fraction(D + 1 / 32), 'sizeOver'),
	rare('final', 'a 64th under, to be reamed', ({ D }) => fraction(D - 1 / 64), 'sixtyFourthUnder'),
	rare('final', 'digits of the number changed places', perRivet({ 5: '#12', 4: '#3' }), 'digits'),
	rare(
		'final',
		'No. 30 for every rivet',
		({ D }) => (D === 1 / 8 ? null : '30'),
		'rowAbove',
		'rowBelow',
		'no30ForFinal'
	),
	rare(
		'final',
		'No. 40 for every rivet',
		({ D }) => (D === 3 / 32 ? null : '#40'),
		'rowAbove',
		'no40ForFinal'
	),
	rare('final', 'the dash number of the rivet for the drill', ({ D }) => `#${D * 32}`),
	rare('final', 'the decimal of the rivet', ({ D }) => decimal(D), 'nominal', 'other-step:pilot'),
	rare(
		'final',
		'the rivet in millimetres, typed without the unit',
		({ D }) => bareMillimetres(D),
		'unit',
		'mm-for-inch+nominal'
	),
	rare('final', 'the dash number read as sixteenths', ({ D }) => fraction(2 * D), 'twiceForFinal'),
	common(
		'pilot',
		'the final drill at once',
		(_, { final }) => decimal(final),
		'finalForPilot',
		'other-step:final'
	),
	common('pilot', 'a 32nd under the rivet', ({ D }) => fraction(D - 1 / 32), 'removalForPilot'),
	rare('pilot', 'a 64th under the rivet', ({ D }) => fraction(D - 1 / 64), 'pilot64thUnder'),
	rare(
		'pilot',
		'a 16th under the rivet',
		({ D }) => (D > 1 / 8 ? fraction(D - 1 / 16) : null),
		'pilot16thUnder'
	),
	common(
		'pilot',
		'No. 40 for every pilot hole',
		() => '#40',
		'finalForPilot',
		'no40ForPilot',
		'smallerFinal'
	),
	rare(
		'pilot',
		'No. 30 for every larger rivet',
		({ D }) => (D > 1 / 8 ? 'No. 30' : null),
		'no30ForPilot',
		'smallerFinal'
	),
	rare(
		'pilot',
		'1/16 in for every pilot hole',
		({ D }) => (D > 1 / 16 ? '1/16' : null),
		'removalForPilot',

		'sixteenthForPilot'
	),
	common(
		'pilot',
		'the row above',
		(given) => {
			const row = rowBeside(given, -1);
			return row && fraction(row.dash / 32);
		},
		'lastForPilot',
		smallerPilot
	),
	common(
		'pilot',
		'the row below',
		(given) => {
			const row = rowBeside(given, 1);
			return row && fraction(row.dash / 32);
		},
		'nextForPilot'
	),
	rare('pilot', 'the dash number read as sixteenths', ({ D }) => fraction(2 * D), 'twiceForPilot'),
	common('clearance', 'none: nominal sizes subtracted', () => '0', 'nominal'),
	common(
		'clearance',
		'0.003 in, as a rule says',
		(_, { clearance }) => off(0.003, clearance, thousandths),
		'ruleOfThumb'
	),
	common(
		'clearance',
		'half on each side',
		(_, { clearance }) => off(clearance / 2, clearance),
		'oneSide'
	),
	common(
		'clearance',
		'the point: hundredths',
		(_, { clearance }) => off(clearance * 10, clearance),
		'digits'
	),
	rare(
		'clearance',
		'two decimals are enough',
		(_, { clearance }) => off(0.01, clearance, hundredths),
		'rounding'
	),
	common(
		'clearance',
		'the final drill itself',
		(_, { final, clearance }) => off(final, clearance),
		'other-step:final'
	),
	rare(
		'clearance',
		'both together',
		({ D }, { final, clearance }) => off(final + D, clearance),
		'addedUp'
	),
	rare('clearance', 'to the next drill of the table', (given, { final, clearance }) => {
		const row = rowBeside(given, 1);
		return row && off(row.size - final, clearance);
	}),
	rare('clearance', '1/64 in: the step of the fraction drills', () => '1/64', 'sixtyFourthOver'),
	rare('clearance', '1/32 in', () => '1/32', 'sizeOver'),
	rare(
		'clearance',
		'in thousandths: 4 for .004',
		(_, { clearance }) => `${Number((clearance * 1000).toFixed(2))}`,
		'unit'
	),
	rare(
		'clearance',
		'the rivet cut to two digits first',
		({ D }, { final, clearance }) => off(final - Math.floor(D * 100) / 100, clearance),
		'rounding'
	),
	common(
		'pilot',
		'pilot and final drill each in the field of the other',
		({ D }) => ({
			pilot: finals.get(D * 32)?.drill ?? '',
			final: fraction(D)
		}),
		'finalForPilot',
		'nominal',
		'other-step'
	),
	common(
		'pilot',
		'both from the row above',
		(given) => {
			const row = rowBeside(given, -1);
			return row && both(given, fraction(row.dash / 32), row.drill);
		},
		'rowAbove',
		'lastForPilot',
		smallerPilot
	),
	common(
		'pilot',
		'both from the row below',
		(given) => {
			const row = rowBeside(given, 1);
			return row && both(given, fraction(row.dash / 32), row.drill);
		},
		'nextForPilot',
		'rowBelow'
	),
	common(
		'pilot',
		'a pilot 32nd under, the final drill right',
		(given) => both(given, fraction(given.D - 1 / 32)),
		'removalForPilot'
	),
	rare(
		'pilot',
		'a pilot 32nd under, and the rivet size to finish',
		({ D }) => ({
			pilot: fraction(D - 1 / 32),
			final: fraction(D)
		}),
		'removalForPilot',
		'nominal'
	),
	common(
		'final',
		'pilot right, then the row below',
		(given) => both(given, fraction(given.D), rowBeside(given, 1)?.drill ?? null),
		'rowBelow'
	),
	common(
		'final',
		'final from the row below, clearance carried on',
		(given) => {
			const row = rowBeside(given, 1);
			return (
				row && {
					pilot: fraction(given.D),
					final: row.drill,
					clearance: decimal(row.size - given.D)
				}
			);
		},
		'rowBelow'
	),
	common(
		'clearance',
		'drills right, the clearance halved',
		(given, { clearance }) => ({
			...both(given, fraction(given.D)),
			clearance: decimal(clearance / 2)
		}),
		'oneSide'
	)
];
