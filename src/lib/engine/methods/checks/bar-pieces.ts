import { fraction } from '../../quantity/kinds.ts';
import { checked } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atMost } from '../../solver/write.ts';
import { barPieces } from '../bar-pieces.ts';
import { tolerance, within } from './parts/tolerance.ts';

export const check = checked(barPieces, {
	takes: { tolerance },
	measured: { measured: given(fraction, 'Length of each piece as cut') },
	each: 'piece',
	keeps: within('measured', 'piece', {
		what: 'Piece',
		behind: 'used',
		short: 'Set it aside, and keep the saw on the waste side of the line.',
		long: 'Trim it to the line, or set the stop again.'
	}),
	possible: [atMost('measured', 'bar', 'A piece cannot be longer than its bar; measure it again.')]
});
