/** A fault to plant: `find` stands exactly once in the file. */
export interface Fault {
	readonly name: string;
	/** Below the top of the project. */
	readonly file: string;
	readonly find: string;
	readonly replace: string;
	/** The tests that must catch it, below tests/engine; else stored drawings and outcome rows. */
	readonly heldBy?: string;
}

/** Faults in one file, each written `[name, find, replace]`, with the tests where they are others. */
function inFile(
	file: string,
	list: readonly (readonly [name: string, find: string, replace: string, heldBy?: string])[]
): Fault[] {
	return list.map(([name, find, replace, heldBy]) => ({
		name,
		find,
		replace,
		...(heldBy && { heldBy }),
		file: `src/lib/engine/${file}`
	}));
}

/** What would teach a learner something wrong, and was or could be overlooked. */
export const faults: readonly Fault[] = [
	...inFile('families/holes/drill-for-rivet.ts', [
		['pilot and final labels exchanged', "under(pilot, '1 pilot')", "under(final, '1 pilot')"],
		['final drill drawn over the pilot hole', '...drillBit(final, -6', '...drillBit(pilot, -6']
	]),
	...inFile('families/holes/parts/rivet-in-hole.ts', [
		[
			'rivet stands on a hole too wide for it',
			'{ small: -shank,',
			'{ loose: -shank,',
			'families/drill-for-rivet.test.ts'
		],
		['hole drawn twice as wide', '2.2 * D) * scale', '2.2 * D) * 2 * scale']
	]),
	...inFile('families/holes/drill-size.ts', [
		['right size lettered at a wrong hole', 'say(seen.key, size)', 'say(seen.key, wanted)']
	]),
	...inFile('families/holes/removal-drill.ts', [
		[
			'head drilled out as wide as it is deep',
			"seen.at('drill'), 0), 4",
			"seen.at('depth'), 0), 4"
		],
		['drill starts at the face of the sheet', '-head * scale,', '0,']
	]),
	...inFile('methods/removal-drill.ts', [
		[
			'“goes past” and “stops inside” exchanged',
			'`past > ${inches(drilledDepth)}`',
			'`past < ${inches(drilledDepth)}`'
		],
		['drill over the shank told as fine', "'over > 0.00001 in'", "'over > 0.5 in'"],
		[
			'head that stays on told as off',
			'{entered} deep stops inside the head, which stays on.',
			'{entered} deep takes the head off.'
		]
	]),
	...inFile('methods/drill-for-rivet.ts', [
		['clearance taken the wrong way round', "gap: shown('final - D')", "gap: shown('D - final')"],
		['loose hole told as filled', "'gap > 0.06 * D'", "'gap > 0.6 * D'"]
	]),
	...inFile('methods/drill-size.ts', [
		['wrong drill named for a size', 'drillOfSize(entered)', 'drillOfSize(right.size)']
	]),
	...inFile('figures/parts/drill-bit.ts', [
		['drill point of 118 degrees', '(67.5 * Math.PI)', '(59 * Math.PI)']
	]),
	...inFile('figures/parts/rivet.ts', [
		[
			'rivet drawn a third as long',
			"rectangle(x - r, 0, 2 * r, length, 'rivet')",
			"rectangle(x - r, 0, 2 * r, length / 3, 'rivet')"
		],
		[
			'cross left off 5056 rivets',
			"case 'B':",
			"case 'C':",
			'families/rivet-number-reading.test.ts'
		],
		[
			'mark of 2117 drawn as that of 2017',
			"[circle(x, y, r * 0.14, 'ink')]",
			"[circle(x, y, r * 0.2, 'rivet')]"
		],
		['countersunk head too deep', '(0.8 * r) / flare', '(1.6 * r) / flare'],
		['universal head of half the height', 'y - 0.85 * r;', 'y - 0.425 * r;']
	]),
	...inFile('figures/parts/rivet-drawing.ts', [
		[
			'length of a rivet counted from the top of its head',
			'dimensionDown(0, tip,',
			'dimensionDown(-0.85 * r, tip,'
		],
		['diameter and length labels exchanged', 'tip, notes.D)', 'tip, notes.length)']
	]),
	...inFile('figures/parts/shop-head.ts', [
		[
			'labels of head width and height exchanged',
			'bottom, notes.across));',
			'bottom, notes.high ?? notes.across));'
		],
		[
			'head width dimension taken over the shank',
			'dimensionAcross(left, right, bottom + 32',
			'dimensionAcross(x - drawnD / 2, x + drawnD / 2, bottom + 32'
		]
	]),
	...inFile('figures/parts/joint.ts', [
		[
			'head width and height exchanged',
			'const w = (shopHead.across * scale) / 2;',
			'const w = (shopHead.high * scale) / 2;'
		],
		[
			'one sheet left out of the stack',
			'const sheets = layers.map(',
			'const sheets = layers.slice(1).map('
		],
		[
			'names of the sheets upside down',
			'text(-26, y + 4, name, {',
			'text(-26, y + 4, names.at(-1 - i) ?? name, {'
		],
		[
			'shop head on the manufactured side',
			'const top = grip * scale;\n\tconst w',
			'const top = 0;\n\tconst w'
		]
	]),
	...inFile('methods/edge-distance.ts', [
		[
			'edge distance told in radii',
			"times: shown('entered / D', hundredths)",
			"times: shown('2 * entered / D', hundredths)"
		],
		['hole that breaks the edge told as near', "'entered <= D / 2'", "'entered <= D / 8'"],
		[
			'far hole told as the greatest',
			'`entered <= right.greatest + ${within}`',
			'`entered <= 2 * right.greatest + ${within}`'
		]
	]),
	...inFile('families/layout/parts/hole-by-edge.ts', [
		[
			'edge distance limit drawn at the wrong multiple',
			'width - times * unit;',
			'width - (times - 0.5) * unit;'
		],
		['minimum lettered as the maximum', "['min', ", "['max', "],
		[
			'hole drawn from the wrong edge',
			'const x = width - Math.max(-1.5',
			'const x = Math.max(-1.5'
		],
		[
			'hole too near drawn as a good one',
			"['least', 'preferred', 'greatest'];",
			"['least', 'preferred', 'greatest', 'near'];"
		]
	]),
	...inFile('methods/lap-width.ts', [
		['last row told from the wrong edge', "'width - edge - (rows", "'edge + (rows"],
		['row too near the edge told as right', '`left < edge - ${line}`', '`left < 0 * edge`']
	]),
	...inFile('methods/rivet-row.ts', [
		['rivets spread as if for one more', 'max(count - 1, 1)', 'max(count, 1)'],
		[
			'a rivet more than needed told as fewest',
			"'count > right.count'",
			"'count > 2 * right.count'"
		]
	]),
	...inFile('families/layout/lap-width.ts', [
		['lap drawn as wide as the right one', "[seen.at('width'),", "[seen.rightAt('width'),"]
	]),
	...inFile('families/layout/parts/row-laid-out.ts', [
		[
			'row with spaces too wide drawn as a good one',
			"const sound = ['right'];",
			"const sound = ['right', 'wide'];"
		]
	]),
	...inFile('figures/parts/hole-row.ts', [
		[
			'last hole of a row dropped',
			'...holes.flatMap((at): Shape[] =>',
			'...holes.slice(0, -1).flatMap((at): Shape[] =>'
		],
		[
			'far end margin not marked',
			'[endMargin, length - endMargin].map(',
			'[endMargin, endMargin].map('
		],
		['pitch and end margin labels exchanged', 'y + 8, labels.pitch)', 'y + 8, labels.margin)']
	]),
	...inFile('figures/parts/lap.ts', [
		['rows of a lap not staggered', 'row % 2 === 0 ? step / 2 : step;', 'step / 2;'],
		[
			'pitch dimensioned over half of it',
			'dimensionDown(step / 2, 1.5 * step',
			'dimensionDown(step / 2, step'
		],
		[
			'lap measured to the last row only',
			'...dimensionAcross(0, drawn, bottom',
			'...dimensionAcross(0, placed.at(-1) ?? drawn, bottom'
		]
	]),
	...inFile('figures/parts/blank.ts', [
		['trim of ends and edges exchanged', 'labels.endTrim, {', 'labels.edgeTrim, {'],
		[
			'finished length dimensioned over the trim',
			'...dimensionAcross(0, width, bottom + 24',
			'...dimensionAcross(left, right, bottom + 24'
		],
		['all of the trim at one end', '[-extra / 2, size + extra / 2]', '[0, size + extra]']
	]),
	...inFile('methods/blank-size.ts', [
		['waste told as a rough side', '`extra > wanted + ${rule}`', '`extra > 9 * wanted + ${rule}`']
	]),
	...inFile('families/cutting/bar-pieces.ts', [
		[
			'kerf drawn on the wrong side of the cut',
			'dimensionAcross(cut, cut + saw, height',
			'dimensionAcross(cut - saw, cut, height'
		],
		['bar and piece labels exchanged', '-18, 0, bar)', '-18, 0, piece)']
	]),
	...inFile('methods/bar-pieces.ts', [
		['a kerf too many in what is missing', '(piece + kerf) - kerf - bar', '(piece + kerf) - bar'],
		['room for another piece told as none', "'count < right.count'", "'count < right.count - 1'"]
	]),
	...inFile('figures/parts/sheet-grid.ts', [
		[
			'kerf left out between blanks',
			'const x = (i % columns) * (along + kerf);',
			'const x = (i % columns) * along;'
		],
		[
			'sheet length and width labels exchanged',
			'-16, 0, sheet.labels[0])',
			'-16, 0, sheet.labels[1])'
		]
	]),
	...inFile('methods/pieces-per-sheet.ts', [
		['blanks laid across told as along', '? "across" : "along"', '? "along" : "across"']
	]),
	...inFile('families/cutting/sheet-weight.ts', [
		[
			'length and width of a sheet exchanged',
			"-18, 0, say('length', length))",
			"-18, 0, say('length', width))"
		]
	]),
	...inFile('figures/parts/bent.ts', [
		[
			'setback sign turned',
			'moldPoint: along(outside, heading, setback)',
			'moldPoint: along(outside, heading, -setback)'
		],
		[
			'inside and outside radius exchanged',
			'side > 0 ? [R, R + T] : [R + T, R]',
			'side > 0 ? [R + T, R] : [R, R + T]'
		],
		['setback to the inside radius only', '* (R + T);\n\tconst outside', '* R;\n\tconst outside']
	]),
	...inFile('figures/parts/bent-notes.ts', [
		[
			'tangent lines drawn a setback away',
			'[out, out + turn].map((heading)',
			'[out + 20, out + turn + 20].map((heading)'
		],
		[
			'setback dimensioned on the wrong leg',
			'along(moldPoint, before, -setback), moldPoint, out, 26',
			'along(moldPoint, before + turn, setback), moldPoint, out, 26'
		],
		[
			'bend angle drawn between the legs',
			'...angleArc(moldPoint, radius, before, before + turn, label)',
			'...angleArc(moldPoint, radius, before + turn, before + 180, label)'
		],
		[
			'angle between the legs drawn from flat',
			'before + side * (180 - inset),',
			'before + side * inset,'
		],
		['leg dimensioned without its setback', 'face(leg.to, after?.setback ?? 0)', 'face(leg.to, 0)'],
		[
			'allowance along the inside face',
			'arc(centre, R + T / 2, out, out + turn)',
			'arc(centre, R, out, out + turn)'
		]
	]),
	...inFile('figures/parts/wanted.ts', [
		[
			'outline of the wanted part left out',
			'outlineOf(section(wanted, scale, start))',
			'outlineOf(part)'
		]
	]),
	...inFile('families/bends/least-bend-radius.ts', [
		['crack drawn on the inside', 'R + T * depth)', 'R + T * (1 - depth))']
	]),
	...inFile('figures/parts/nose-bar.ts', [
		[
			'nose bar without its radius',
			'arc(centre, R, -90, 90 - slope)',
			'arc(centre, R / 4, -90, 90 - slope)'
		]
	]),
	...inFile('figures/parts/chart-table.ts', [
		[
			'chart without its last row',
			'...rows.flatMap((cells, n) =>',
			'...rows.slice(0, -1).flatMap((cells, n) =>'
		]
	]),
	...inFile('families/bends/finished-leg.ts', [
		[
			'flat and leg exchanged in the drawing',
			'legDimension(part, 0, 62, ',
			'legDimension(part, 1, 62, '
		],
		['flat dimensioned to the end of the bend', 'along(to, below, T / 2)]', 'along(to, below, T)]']
	]),
	...inFile('methods/sight-line.ts', [
		[
			'setback left out told as taken off',
			"'No setback added: the leg",
			"'Setback taken off: the leg",
			'solver/inverse.test.ts'
		]
	]),
	...inFile('families/rivets/rivet-length.ts', [
		[
			'rivet drawn as long as its grip',
			'evaluate(rivetLength, given).needed',
			'evaluate(rivetLength, given).grip'
		],
		[
			'grip and shank labels exchanged',
			"width + 22, width, 'grip')",
			"width + 22, width, 'shank for the shop head')"
		],
		[
			'grip dimensioned to the tip',
			'dimensionDown(0, bottom, width + 22',
			'dimensionDown(0, tip, width + 22'
		]
	]),
	...inFile('families/rivets/rivet-number-reading.ts', [
		[
			'leader to the edge instead of a rivet',
			'...leader(rivets[5] ?? 0, middle - both(9),',
			'...leader(rivets[5] ?? 0, 0,'
		]
	]),
	...inFile('methods/outcomes/setback.ts', [
		[
			'legs too long told as too short',
			"shown('right.setback - setback')",
			"shown('setback - right.setback')"
		]
	]),
	...inFile('methods/outcomes/leg-off.ts', [
		[
			'“too long” and “too short” exchanged',
			"off('about {about} too long')",
			"off('about {about} too short')"
		]
	]),
	...inFile('methods/least-bend-radius.ts', [
		['radius that cracks told as safe', "'radius < right.radius'", "'radius < right.radius / 9'"]
	]),
	...inFile('methods/rivet-length.ts', [
		['shank told from the head down', "'(length - grip) / D'", "'length / D'"],
		['head driven to the wrong width', "headAcross: shown('1.5 * D')", "headAcross: shown('2 * D')"]
	]),
	...inFile('methods/outcomes/head-size.ts', [
		[
			'most and least size of a head exchanged',
			'under: when(`${key} < ${least} * D`',
			'under: when(`${key} < ${most} * D`'
		]
	]),
	...inFile('methods/outcomes/diameter.ts', [
		[
			'rivet that shears told as too large',
			"'size < right.diameter'",
			"'size < 0.5 * right.diameter'"
		]
	])
];
