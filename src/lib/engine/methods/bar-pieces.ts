import { count, fraction } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import {
	atLeast,
	method,
	otherwise,
	outcome,
	shown,
	slip,
	type SlipText,
	step,
	when
} from '../solver/write.ts';
import { nearRight } from './outcomes/near-right.ts';
import { layoutLine, wholeNumber } from '../trade/tolerances.ts';

export const barPieces = method({
	id: 'bar-pieces',
	title: 'Pieces from a bar with a kerf at every cut',
	given: {
		bar: given(fraction, 'Bar'),
		piece: given(fraction, 'Piece'),
		kerf: given(fraction, 'Kerf', { zero: true })
	},
	steps: {
		count: step('downTo((bar + kerf) / (piece + kerf), 1)', 'Pieces from the bar', {
			asks: 'How many whole pieces come out of the bar?',

			rule: 'cut.bar',
			kind: count,
			tolerance: wholeNumber,
			slips: {
				noKerf: slip(
					'downTo(bar / piece, 1)',
					'Kerf is missing: every cut turns metal into chips.',
					{ act: 'kerf' }
				),
				lastCut: slip(
					'downTo(bar / (piece + kerf), 1)',
					'A kerf was counted after the last piece too: where the piece ends at the end of the bar, it needs no cut.'
				),
				kerfBothSides: slip(
					'downTo(bar / (piece + 2 * kerf), 1)',
					'Twice the kerf for every piece: one cut parts two pieces.',
					{ act: 'two kerfs' }
				),
				oneKerfOff: slip(
					'downTo((bar - kerf) / piece, 1)',
					'One kerf in all was taken off: there is one after every piece.',
					{ rare: true }
				),
				kerfOff: slip(
					'downTo(bar / (piece - kerf), 1)',
					'The kerf was taken off the piece: it comes on top of it.',
					{ rare: true, act: 'kerf off' }
				),
				halfKerf: slip(
					'downTo(bar / (piece + kerf / 2), 1)',
					'Half a kerf for every piece: each piece is cut off with a whole one.',
					{ rare: true, act: 'half kerf' }
				),
				kerfEighth: countWithKerf('1/8 in'),
				kerfSixteenth: countWithKerf('1/16 in'),
				up: slip(
					'upTo((bar + kerf) / (piece + kerf), 1)',
					'Rounded up: the last piece comes out short.',
					{ rare: true, act: 'up' }
				),
				upNoKerf: slip(
					'upTo(bar / piece, 1)',
					'The kerf is left out, and the number rounded up: the last piece comes out short.',
					{ rare: true, act: 'kerf', late: true }
				),
				nearest: slip(
					'nearest((bar + kerf) / (piece + kerf), 1)',
					'Rounded to the nearest whole number: the last piece comes out short.',
					{ rare: true, act: 'up' }
				),
				cuts: slip(
					'downTo((bar + kerf) / (piece + kerf), 1) - 1',
					'One too few: count every piece that comes out, and not the cuts between them.'
				)
			}
		}),
		used: step('count * (piece + kerf)', 'Bar used, a kerf after every piece', {
			asks: 'How much bar do they use, kerfs and all?',

			rule: 'cut.bar',
			tolerance: layoutLine,
			slips: {
				chipsKept: slip(
					'count * piece',
					'Only the pieces were counted: each one takes a kerf too.',
					{ act: 'kerf' }
				),
				usedEighth: usedWithKerf('1/8 in'),
				usedSixteenth: usedWithKerf('1/16 in'),
				usedHalfKerf: slip(
					'count * (piece + kerf / 2)',
					'Laid out with half a kerf for every piece: each cut takes a whole one.',
					{ rare: true, act: 'half kerf' }
				),
				wholeBar: slip('bar', 'That is the whole bar: its remnant is not used.', { rare: true }),
				kerfsOnly: slip('count * kerf', 'The kerfs only: the pieces use metal too.'),
				kerfsOff: slip(
					'count * (piece - kerf)',
					'The kerfs were taken off the pieces: they come on top of them.',
					{ rare: true, act: 'kerf off' }
				),
				usedTwoKerfs: slip(
					'count * (piece + 2 * kerf)',
					'Laid out with twice the kerf for every piece: one cut parts two pieces.',
					{ act: 'two kerfs', late: true }
				),
				oneKerfMore: slip(
					'count * (piece + kerf) + kerf',
					'One kerf too many: there is one after every piece.',
					{ rare: true }
				),
				lastKerfKept: slip(
					'count * piece + (count - 1) * kerf',
					'One kerf too few: the last piece is cut from the remnant too.'
				),
				oneKerf: slip('count * piece + kerf', 'One kerf in all: there is one after every piece.')
			}
		}),
		remnant: step('max(bar - used, 0 in)', 'Remnant', {
			asks: 'What is left of the bar?',

			rule: 'cut.bar',
			tolerance: layoutLine,
			slips: {
				partAsInches: slip(
					'(bar / (piece + kerf) - downTo(bar / (piece + kerf), 1)) * (1 in)',
					'The part after the decimal point is a part of a piece, not inches: multiply it by the piece and its kerf.'
				),
				nothingLeft: slip(
					'0 in',
					'Nothing left: the bar is not used up, the rest of it is too short for a piece.'
				),
				kerfsForRemnant: slip(
					'count * kerf',
					'Those are the chips: the remnant is what is left of the bar after the last cut.',
					{ rare: true }
				),
				partOfPiece: slip(
					'((bar + kerf) / (piece + kerf) - count) * piece',
					'The part after the decimal point times the piece: it stands for a piece with its kerf.'
				)
			}
		})
	},
	limits: [atLeast('count', '1', 'The bar is too short for one piece: take a longer bar.')],
	outcomes: [
		outcome(
			['count'],
			{
				short: shown('count * (piece + kerf) - kerf - bar'),
				left: shown('max(bar - count * (piece + kerf), 0 in)')
			},
			{
				over: when(
					'count > right.count',
					'{entered} pieces and the cuts between them need {short} more bar than there is.'
				),
				whole: when('left <= 0 in', '{entered} pieces use up the whole bar.'),
				another: when(
					'count < right.count',
					'{entered} pieces leave {left}, enough for another piece.'
				),
				most: otherwise('{entered} pieces leave {left}, too short for another piece.')
			}
		),
		outcome(
			['remnant'],
			{},
			{
				left: when(
					nearRight('remnant', layoutLine),
					'{entered} is left after {count} pieces and their cuts.'
				),
				more: when('remnant > right.remnant', '{entered} is more than the saw leaves.'),
				less: otherwise('{entered} is less than the saw leaves.')
			}
		)
	]
});

/** Counted with the kerf of another saw. */
function countWithKerf(kerf: string): SlipText {
	return slip(
		`downTo((bar + (${kerf})) / (piece + (${kerf})), 1)`,
		`Worked with a kerf of ${kerf}: this saw takes another.`,
		{ rare: true, act: `kerf ${kerf}`, late: true }
	);
}

/** The bar used, with the kerf of another saw. */
function usedWithKerf(kerf: string): SlipText {
	return slip(
		`count * (piece + (${kerf}))`,
		`The pieces were laid out with a kerf of ${kerf}: this saw takes another.`,
		{ rare: true, act: `kerf ${kerf}`, late: true }
	);
}
