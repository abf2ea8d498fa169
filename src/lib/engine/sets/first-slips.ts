/**
 * The families of the first edition in its order, and the slips of each in theirs, by the ids they
 * have now. Needed to draw the options of its papers again, and for nothing else.
 */
export const firstSlips: Readonly<Record<string, string>> = {
	RT: 'oneT twoT fourT notStocked down sixteenths tooSmall',
	RD: 'thinnest wholeStack average oneT twoT fourT notStocked down sixteenths tooSmall',
	RL: 'oneLayer thinLeftOut thickLeftOut headToo halfD oneD twoD noShank twoShanks notStocked down halfSize oneMore',
	SH: 'notSpread leastWidth mostWidth universalWidth halfWidth leastHeight mostHeight universalHeight halfHeight shankHeight',
	SC: 'widthAlone heightAlone accepted drivenMore replaced shankForLeast wantedForLeast halfLeastWidth wantedForMost universalForMost halfMostWidth wantedForLow mostForLow halfLow wantedForHigh leastForHigh shankForHigh',
	RN: 'universalHead countersunkHead roundHead flatHead lettersA lettersAD lettersB lettersD lettersDD diameterIn16ths diameterIn64ths lengthIn32nds lengthIn8ths swapped olderStandard',
	RR: 'universalHead countersunkHead alloy1100 alloy2117 alloy5056 alloy2017 alloy2024 lastForDiameter firstForLength diameterIn16ths diameterIn64ths diameterInTenths lengthIn32nds lengthIn8ths lengthInTenths',
	ED: 'flushFactor protrudingFactor pitchFactor shankFactor halfLeast nothingAdded oneThirtySecond nextRivet halfGreatest pitchForGreatest greatestPitch twiceLeast',
	LR: 'oneMargin noMargin spacesDown oneSpaceMore spacesForRivets oneRivetLess pitchNotDivided byRivets wholeLength pitchToSixteenths firstOnEdge firstAtPitch',
	LF: 'flushFactor protrudingFactor pitchFactor shankFactor fullPitch stagger closestAlone pitchAlone pitchFloor oneEdge spacePerRow edgesOnly noEdges',
	CB: 'oneEnd bothEnds edgeTrimOnLength noEndTrim endTrimOff oneEdge bothEdges endTrimOnWidth noEdgeTrim edgeTrimOff',
	CS: 'noKerfAlong upAlong noKerfAcross upAcross area turned addedUp noKerfTurnedAlong upTurnedAlong noKerfTurnedAcross upTurnedAcross alongOnly bothWays',
	CP: 'noKerf lastCut kerfBothSides up cuts chipsKept lastKerfKept oneKerf partOfPiece',
	CW: 'densityOf2024 densityOf5052 densityOf2014 specificGravity noThickness oneSideInFeet bothSidesInFeet twice',
	BS: 'legs square whole halved share noT diameter middle brackets allowance',
	BL: 'legs fromSquare square whole halved share noT diameter middle brackets',
	BA: 'brackets diameter outside swappedR noT swappedT halfT legs square early middle setback',
	BW: 'square legs noT diameter once moldLines inside allowNoT allowances.brackets allowLegs allowSetback oneAllowance noAllowance sum halfSetback',
	BG: 'legs square noT moldLines added middle outward atTangent plusT otherLeg',
	BR: 'rowUp rowDown columnLeft columnRight annealed thickness decimals under largest',
	HP: 'finalForPilot removalForPilot halfForPilot nextForPilot nominal rowAbove rowBelow sixtyFourthOver sizeOver oneSide bothSides',
	HD: 'rowLarger rowSmaller twoRowsLarger twoRowsSmaller asThousandths as64ths down thirtySeconds oneMore',
	HR: 'sameSize finalAgain twoUnder countersunk shopHeadHigh oneDiameter byDrill halfDepth oneLayer thickLeftOut headToo wholeGrip halfGrip oneThird'
};
