/**
 * What each family's method is for on the bench, in two or three short sentences of its own: the
 * rest of its lesson is read from method, figure and outcomes. By id of the family.
 */
export const bench: Readonly<Record<string, string>> = {
	'rivet-diameter':
		'The rivet must be strong enough for the sheet, and the sheet for the rivet. The general range is 2.5 to 3 thicknesses of the thicker sheet; the usual rule takes the next stocked size above 3.',
	'rivet-diameter-from-stack':
		'In a stack, the thickest layer decides which rivet can carry it. The others do not add to it: a stack of thin layers keeps its small rivet.',
	'rivet-length':
		'A rivet goes through the whole stack and must still stand out far enough to be driven into a shop head. Too short, and the head is a stub; too long, and the shank bends over.',
	'shop-head':
		'The shank that stands out becomes the shop head. Its width and height tell whether the rivet fills the hole and holds, so you know both before you drive.',
	'shop-head-check':
		'Every driven rivet is looked at. Width and height both have to lie within their limits, or the rivet is reworked.',
	'rivet-number':
		'The bin, the drawing and the order all call a rivet by its number. Head, alloy, diameter and length are all in it, in that order.',
	'rivet-number-reading':
		'You read a rivet off its number before you fetch drill, set and bucking bar. The first dash number is the diameter in 32nds, the second the length in 16ths.',
	'edge-distance':
		'A hole too near the edge tears out under load; one too far in lets the edge lift. Edge distance runs from the centre of the hole to the edge, and is counted in rivet diameters.',
	'rivet-row':
		'A row is divided into equal spaces between its two end rivets. One space more than was meant, and every hole of the row is in the wrong place.',
	'lap-width':
		'Two sheets lap just far enough for their rows of rivets, with edge distance on both sides. Cut the lap too narrow and the last row stands too near its edge.',
	'blank-size':
		'A part that is finished to the line after it is cut starts larger by its trim. Trim counts once for every side that has it.',
	'pieces-per-sheet':
		'Before you cut, you know how many blanks the sheet gives. Only whole blanks count, row by row, with a kerf between them if a saw parts them.',
	'bar-pieces':
		'Every saw cut turns its width of the bar into chips. The kerf comes on top of each piece, and what is left over goes back into the rack.',
	'sheet-weight':
		'Weight is reckoned before a part is made or a sheet is lifted. Length, width and thickness give the metal there is; its density tells what that weighs.',
	'whole-panel':
		'A panel is worked through in the order of the bench: rivet, drill, edge distance, rows. Each number rests on the one before, so a wrong one early spoils the rest.',
	setback:
		'Sheet goes round a radius, so it leaves the flat before the corner. Setback is how far before: from the bend tangent line to the mold line. Take it off each leg, or the leg comes out long by it.',
	'setback-from-legs':
		'Drawings often give the angle between the legs, but the brake bends from flat. Turn the angle round first, or K and the setback belong to another bend.',
	'bend-allowance':
		'Between its two tangent lines the metal runs round the bend. Bend allowance is how much of the flat sheet that takes, measured along the neutral line.',
	'developed-width':
		'The blank is cut flat and must come out right when it is bent. Flats and bend allowances together are its width, always less than the mold line dimensions added up.',
	'sight-line':
		'In the brake you cannot see the tangent line: it lies under the nose. The sight line is the one you can see: a radius into the bend, right below the edge of the nose.',
	'finished-leg':
		'When a flat is already cut, you can tell how long its leg will come out. The leg reaches to the mold line, so the setback comes back on.',
	'least-bend-radius':
		'Bent too sharp, sheet cracks on the outside of the bend. The chart gives the sharpest radius for alloy, temper and thickness, and the nose bar must not be sharper.',
	'drill-for-rivet':
		'A small pilot hole starts straight; the final drill leaves the few thousandths that the shank fills when it is driven. A hole too small will not take the rivet, one too large is never filled.',
	'drill-size':
		'Drills come by number, by letter and by fraction. The chart tells what size each one is, and which fraction lies next above or below it.',
	'removal-drill':
		'A bad rivet is drilled out through its head without touching the hole. Drill only as deep as the head is high, then punch the shank out.',
	'rivets-each-side':
		'A break is bridged by rivets on both sides of it. The table gives how many each inch of its width takes; the full number goes on each side.'
};
