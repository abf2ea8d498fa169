import { count, fraction } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { wholeNumber } from '../trade/tolerances.ts';

const counted = { rule: 'cut.sheet', kind: count, tolerance: wholeNumber } as const;

/** Blanks with their kerf into the sheet with one: after the last blank no cut is needed. */
const lengthsAlong = '(sheetLength + kerf) / (pieceLength + kerf)';
const widthsAcross = '(sheetWidth + kerf) / (pieceWidth + kerf)';
const widthsAlong = '(sheetLength + kerf) / (pieceWidth + kerf)';
const lengthsAcross = '(sheetWidth + kerf) / (pieceLength + kerf)';

const laidOut = {
	over: when(
		'entered > holds',
		'{entered} blanks laid {way} the sheet: more than the sheet holds this way.'
	),
	room: when('entered < holds', '{entered} blanks laid {way} the sheet: there is room for more.'),
	full: otherwise('{entered} blanks laid {way} the sheet: it holds no more this way.')
};

/** Blanks all laid one way in straight rows; mixed layouts can hold more and are not looked at. */
export const piecesPerSheet = method({
	id: 'pieces-per-sheet',
	title: 'Blanks from a sheet, all laid one way',
	given: {
		sheetLength: given(fraction, 'Sheet length'),
		sheetWidth: given(fraction, 'Sheet width'),
		pieceLength: given(fraction, 'Blank length', { symbol: 'blank length' }),
		pieceWidth: given(fraction, 'Blank width', { symbol: 'blank width' }),
		kerf: given(fraction, 'Kerf', { zero: true })
	},
	steps: {
		alongLength: step(`downTo(${lengthsAlong}, 1)`, 'Blank lengths in the sheet length', {
			asks: 'How many blank lengths go along the sheet?',

			...counted,
			slips: {
				noKerfAlong: slip(
					'downTo(sheetLength / pieceLength, 1)',
					'The kerf is left out along the sheet: every cut takes metal.',
					{ act: 'kerf' }
				),
				upAlong: slip(
					`upTo(${lengthsAlong}, 1)`,
					'Rounded up along the sheet: the last blank runs off the end.',
					{ rare: true, act: 'up' }
				),
				nearestAlong: slip(
					`nearest(${lengthsAlong}, 1)`,
					'Rounded to the nearest whole number along the sheet: the last blank is too short.',
					{ act: 'up' }
				),
				widthsAlong: slip(
					`downTo(${widthsAlong}, 1)`,
					'Turned a quarter: that many blank widths go along the sheet, not blank lengths.',
					{ act: 'turned' }
				),
				widthsAlongNoKerf: slip(
					'downTo(sheetLength / pieceWidth, 1)',
					'Turned a quarter, and without the kerf: blank lengths go along the sheet here.',
					{ rare: true, act: 'turned, no kerf' }
				),
				acrossForAlong: slip(
					`downTo(${lengthsAcross}, 1)`,
					'Divided into the sheet width: blank lengths along the sheet go into its length.',
					{ rare: true }
				),
				widthsAcrossForAlong: slip(
					`downTo(${widthsAcross}, 1)`,
					'Those are the blank widths across the sheet: along it go the blank lengths.',
					{ rare: true, act: 'sides' }
				),
				cutsAlong: slip(
					`downTo(${lengthsAlong}, 1) - 1`,
					'One too few along the sheet: count the blanks, not the cuts between them.',
					{ rare: true, act: 'cuts' }
				)
			}
		}),
		acrossWidth: step(`downTo(${widthsAcross}, 1)`, 'Blank widths in the sheet width', {
			asks: 'How many blank widths go across it?',

			...counted,
			slips: {
				noKerfAcross: slip(
					'downTo(sheetWidth / pieceWidth, 1)',
					'The kerf is left out across the sheet: every cut takes metal.',
					{ act: 'kerf' }
				),
				upAcross: slip(
					`upTo(${widthsAcross}, 1)`,
					'Rounded up across the sheet: the last row runs off the edge.',
					{ rare: true, act: 'up' }
				),
				nearestAcross: slip(
					`nearest(${widthsAcross}, 1)`,
					'Rounded to the nearest whole number across the sheet: the last row is too narrow.',
					{ act: 'up' }
				),
				lengthsAlongForAcross: slip(
					`downTo(${lengthsAlong}, 1)`,
					'Those are the blank lengths along the sheet: across it go the blank widths.',
					{ rare: true, late: true, act: 'sides' }
				)
			}
		}),
		lengthwise: step('alongLength * acrossWidth', 'Blanks laid along the sheet', {
			asks: 'How many blanks come out that way?',

			...counted,
			slips: {
				area: slip(
					'downTo(sheetLength * sheetWidth / (pieceLength * pieceWidth), 1)',
					'Area divided by area: the strips left over are too narrow to make whole blanks.',
					{ act: 'area' }
				),
				roundedLast: slip(
					'downTo(sheetLength / (pieceLength + kerf) * (sheetWidth / (pieceWidth + kerf)), 1)',
					'Multiplied first and rounded down last: round down each way, parts of blanks do not add up to a whole one.'
				),
				areaUp: slip(
					'upTo(sheetLength * sheetWidth / (pieceLength * pieceWidth), 1)',
					'Area divided by area and rounded up: a part of a blank is no blank.',
					{ rare: true }
				),
				upBoth: slip(
					`upTo(${lengthsAlong}, 1) * upTo(${widthsAcross}, 1)`,
					'Rounded up both ways: the last blanks run off the end and the edge.',
					{ act: 'up both' }
				),
				cutsCounted: slip(
					'(alongLength - 1) * (acrossWidth - 1)',
					'One too few each way: count the blanks and not the cuts between them.',
					{ rare: true, act: 'cuts' }
				),
				turned: slip(
					`downTo(${widthsAlong}, 1) * downTo(${lengthsAcross}, 1)`,
					'That is with the blanks turned a quarter; laid along the sheet it is another number.',
					// Whoever is asked for the better way has tried one alone.
					{ rare: true, act: 'turned' }
				),
				turnedNoKerf: slip(
					'downTo(sheetLength / pieceWidth, 1) * downTo(sheetWidth / pieceLength, 1)',
					'That is with the blanks turned a quarter, and without the kerf.',
					{ rare: true, act: 'turned, no kerf' }
				),
				addedUp: slip(
					'alongLength + acrossWidth',
					'The two counts were added: rows times blanks in a row gives the number.',
					{ rare: true, act: 'added' }
				)
			}
		}),
		turnedAlong: step(`downTo(${widthsAlong}, 1)`, 'Blank widths in the sheet length', {
			asks: 'Turned a quarter: how many blank widths go along the sheet?',

			...counted,
			slips: {
				noKerfTurnedAlong: slip(
					'downTo(sheetLength / pieceWidth, 1)',
					'The kerf is left out along the sheet, with the blanks turned.',
					{ act: 'kerf' }
				),
				upTurnedAlong: slip(
					`upTo(${widthsAlong}, 1)`,
					'Rounded up along the sheet with the blanks turned: the last blank runs off the end.',
					{ rare: true, act: 'up' }
				),
				nearestTurnedAlong: slip(
					`nearest(${widthsAlong}, 1)`,
					'Rounded to the nearest whole number along the sheet with the blanks turned: the last blank is too short.',
					{ rare: true, act: 'up' }
				)
			}
		}),
		turnedAcross: step(`downTo(${lengthsAcross}, 1)`, 'Blank lengths in the sheet width', {
			asks: 'And how many blank lengths across it?',

			...counted,
			slips: {
				noKerfTurnedAcross: slip(
					'downTo(sheetWidth / pieceLength, 1)',
					'The kerf is left out across the sheet, with the blanks turned.',
					{ act: 'kerf' }
				),
				upTurnedAcross: slip(
					`upTo(${lengthsAcross}, 1)`,
					'Rounded up across the sheet with the blanks turned: the last row runs off the edge.',
					{ rare: true, act: 'up' }
				),
				nearestTurnedAcross: slip(
					`nearest(${lengthsAcross}, 1)`,
					'Rounded to the nearest whole number across the sheet with the blanks turned: the last row is too narrow.',
					{ rare: true, act: 'up' }
				)
			}
		}),
		crosswise: step('turnedAlong * turnedAcross', 'Blanks laid across the sheet', {
			asks: 'How many blanks come out turned a quarter?',

			...counted,
			slips: {
				areaTurned: slip(
					'downTo(sheetLength * sheetWidth / (pieceLength * pieceWidth), 1)',
					'Area divided by area for the turned blanks: the strips left over make no whole blanks.',
					{ act: 'area' }
				),
				upBothTurned: slip(
					`upTo(${widthsAlong}, 1) * upTo(${lengthsAcross}, 1)`,
					'Rounded up both ways with the blanks turned: the last blanks run off the end and the edge.',
					{ act: 'up both' }
				),
				cutsTurned: slip(
					'(turnedAlong - 1) * (turnedAcross - 1)',
					'One too few each way with the blanks turned: count the blanks and not the cuts.',
					{ rare: true, act: 'cuts' }
				),
				addedTurned: slip(
					'turnedAlong + turnedAcross',
					'The two counts of the turned blanks were added: multiply them.',
					{ rare: true, act: 'added' }
				),
				notTurned: slip(
					'lengthwise',
					'That is with the blanks along the sheet once more: turned, their widths go along it.',
					{ rare: true }
				)
			}
		}),
		count: step('max(lengthwise, crosswise)', 'Blanks from the sheet, laid the better way', {
			asks: 'So how many come out, laid the better way?',

			...counted,
			slips: {
				rowsAdded: slip(
					'alongLength + acrossWidth',
					'The counts along and across were added: rows times blanks in a row gives the number.',
					{ rare: true }
				),
				cutsForBlanks: slip(
					'(alongLength - 1) * (acrossWidth - 1)',
					'One too few each way, as there are cuts between them: count the blanks.',
					{ rare: true }
				),
				rowTooFew: slip(
					'lengthwise > crosswise ? alongLength * (acrossWidth - 1) : turnedAlong * (turnedAcross - 1)',
					'One row too few across the sheet: count the rows that fit.',
					{ rare: true, late: true }
				),
				columnTooFew: slip(
					'lengthwise > crosswise ? (alongLength - 1) * acrossWidth : (turnedAlong - 1) * turnedAcross',
					'One blank too few along the sheet: count those that fit.',
					{ rare: true, late: true }
				),
				alongOnly: slip(
					'lengthwise',
					'That is the count along the sheet: turned a quarter, more blanks come out.'
				),
				acrossOnly: slip(
					'crosswise',
					'That is the count of the turned blanks: laid along the sheet, more come out.'
				),
				bothWays: slip(
					'lengthwise + crosswise',
					'Both ways were added: the sheet can be cut one way only.',
					{ rare: true }
				)
			}
		})
	},
	limits: [
		atLeast(
			'count',
			'1',
			'The blank does not fit the sheet either way: take a larger sheet or a smaller blank.'
		)
	],
	outcomes: [
		outcome(
			['lengthwise'],
			{
				way: shown('"along"'),
				holds: shown('right.lengthwise', count)
			},
			laidOut
		),
		outcome(
			['count'],
			{
				way: shown(
					'entered != lengthwise and (entered == crosswise or crosswise > lengthwise) ? "across" : "along"'
				),
				holds: shown('way == "across" ? crosswise : lengthwise', count)
			},
			{
				turned: when(
					'entered == holds and holds < right.count',
					'{entered} blanks laid {way} the sheet: laid the other way, more come out.'
				),
				...laidOut
			}
		)
	]
});
