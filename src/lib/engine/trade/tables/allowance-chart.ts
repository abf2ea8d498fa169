import { fraction, length } from '../../quantity/kinds.ts';
import { sameGauge } from '../gauges.ts';
import { source } from '../source.ts';
import { byLength } from '../table/axis.ts';
import { holding, table } from '../table/table.ts';
import { asNumber, places } from '../table/writing.ts';

/*
 * One figure prints two allowances in every cell, for a bend of 90° and for one degree: here they
 * are two tables.
 */

const radii = [
	1 / 32,
	1 / 16,
	3 / 32,
	1 / 8,
	5 / 32,
	3 / 16,
	7 / 32,
	1 / 4,
	9 / 32,
	5 / 16,
	11 / 32,
	3 / 8,
	7 / 16,
	1 / 2
];

/** Thickness; allowances for 90° in 1/1,000 in; for one degree in 1/1,000,000 in; up to 1/2 in. */
const printed: readonly (readonly [number, readonly number[], readonly number[]])[] = [
	[
		0.02,
		[62, 113, 161, 210, 259, 309, 358, 406, 455, 505, 554, 603, 702, 799],
		[693, 1251, 1792, 2333, 2874, 3433, 3974, 4515, 5056, 5614, 6155, 6695, 7795, 8877]
	],
	[
		0.025,
		[66, 116, 165, 214, 263, 313, 362, 410, 459, 509, 558, 607, 705, 803],
		[736, 1294, 1835, 2376, 2917, 3476, 4017, 4558, 5098, 5657, 6198, 6739, 7838, 8920]
	],
	[
		0.028,
		[68, 119, 167, 216, 265, 315, 364, 412, 461, 511, 560, 609, 708, 805],
		[759, 1318, 1859, 2400, 2941, 3499, 4040, 4581, 5122, 5680, 6221, 6762, 7862, 7862]
	],
	[
		0.032,
		[71, 121, 170, 218, 267, 317, 366, 415, 463, 514, 562, 611, 710, 807],
		[787, 1345, 1886, 2427, 2968, 3526, 4067, 4608, 5149, 5708, 6249, 6789, 7889, 8971]
	],
	[
		0.038,
		[75, 126, 174, 223, 272, 322, 371, 419, 468, 518, 567, 616, 715, 812],
		[8370, 1396, 1937, 2478, 3019, 3577, 4118, 4659, 5200, 5758, 6299, 6840, 7940, 9021]
	],
	[
		0.04,
		[77, 127, 176, 224, 273, 323, 372, 421, 469, 520, 568, 617, 716, 813],
		[853, 1411, 1952, 2493, 3034, 3593, 4134, 4675, 5215, 5774, 6315, 6856, 7955, 9037]
	],
	[
		0.051,
		[134, 183, 232, 280, 331, 379, 428, 477, 527, 576, 624, 723, 821],
		[1413, 2034, 2575, 3116, 3675, 4215, 4756, 5297, 5855, 6397, 6934, 8037, 9119]
	],
	[
		0.064,
		[144, 192, 241, 290, 340, 389, 437, 486, 536, 585, 634, 732, 830],
		[1595, 2136, 2676, 3218, 3776, 4317, 4858, 5399, 5957, 6498, 7039, 8138, 9220]
	],
	[
		0.072,
		[198, 247, 296, 436, 394, 443, 492, 542, 591, 639, 738, 836],
		[2202, 2743, 3284, 3842, 4283, 4924, 5465, 6023, 6564, 7105, 8205, 9287]
	],
	[
		0.078,
		[202, 251, 300, 350, 399, 447, 496, 546, 595, 644, 745, 840],
		[2249, 2790, 3331, 3889, 4430, 4963, 5512, 6070, 6611, 7152, 8252, 9333]
	],
	[
		0.081,
		[204, 253, 302, 352, 401, 449, 498, 548, 598, 646, 745, 842],
		[2272, 2813, 3354, 3912, 4453, 4969, 5535, 6094, 6635, 7176, 8275, 9357]
	],
	[
		0.091,
		[212, 260, 309, 359, 408, 456, 505, 555, 604, 653, 752, 849],
		[2350, 2891, 3432, 3990, 4531, 5072, 5613, 6172, 6713, 7254, 8353, 9435]
	],
	[
		0.094,
		[214, 262, 311, 361, 410, 459, 507, 558, 606, 655, 754, 851],
		[2374, 2914, 3455, 4014, 4555, 5096, 5637, 6195, 6736, 7277, 8376, 9458]
	],
	[
		0.102,
		[268, 317, 367, 416, 464, 513, 563, 612, 661, 760, 857],
		[2977, 3518, 4076, 4617, 5158, 5699, 6257, 6798, 7339, 8439, 9521]
	],
	[
		0.109,
		[273, 321, 372, 420, 469, 518, 568, 617, 665, 764, 862],
		[3031, 3572, 4131, 4672, 5213, 5754, 6312, 6853, 8394, 8493, 9575]
	],
	[
		0.125,
		[284, 333, 383, 432, 480, 529, 579, 628, 677, 776, 873],
		[3156, 3697, 4256, 4797, 5338, 5678, 6437, 6978, 7519, 8618, 9700]
	],
	[
		0.156,
		[355, 405, 453, 502, 551, 601, 650, 698, 797, 895],
		[3939, 4497, 5038, 5579, 6120, 6679, 7220, 7761, 8860, 9942]
	],
	[
		0.188,
		[417, 476, 525, 573, 624, 672, 721, 820, 917],
		[4747, 5288, 5829, 6370, 6928, 7469, 8010, 9109, 10191]
	],
	[0.25, [568, 617, 667, 716, 764, 863, 961], [6313, 6853, 7412, 7953, 8494, 9593, 10675]]
];

/** Cells that disagree with the rest of the chart: thickness and radius. */
const suspects = [
	[0.028, 1 / 2],
	[0.038, 1 / 32],
	[0.051, 1 / 16],
	[0.072, 3 / 16],
	[0.072, 7 / 32],
	[0.078, 7 / 16],
	[0.081, 1 / 4],
	[0.109, 3 / 8],
	[0.125, 9 / 32],
	[0.188, 3 / 16]
] as const;

const shared = {
	topic: 'bends',
	called: 'the allowance chart',
	source: source('airframe', 'ch. 4, p. 4-65, Fig. 4-128'),
	rows: byLength(
		'Thickness',
		printed.map(([thickness]) => thickness),
		{ write: places(3), means: sameGauge }
	),
	columns: byLength('Inside radius', radii, { write: asNumber(fraction) }),
	suspect: suspects.map(([row, column]) => ({
		row,
		column,
		why: 'the figures printed there for 90° and for one degree do not agree'
	}))
};

/** The sharp radii that thick sheet is not bent to are not printed. */
function fromTheLeft(values: readonly number[], per: number): (number | null)[] {
	const missing = radii.length - values.length;
	return radii.map((_, i) => (i < missing ? null : (values[i - missing] ?? NaN) / per));
}

/** Bend allowance in inches for a bend of 90°. */
export const allowances90 = table({
	...shared,
	id: 'allowance-90',
	title: 'Bend allowance for 90°, inches',
	holds: holding(length, places(3), ' in'),
	cells: printed.map(([, at90]) => fromTheLeft(at90, 1e3))
});

/** Bend allowance in inches for each degree of bend. */
export const allowancesPerDegree = table({
	...shared,
	id: 'allowance-per-degree',
	title: 'Bend allowance for one degree, inches',
	holds: holding(length, places(6), ' in'),
	cells: printed.map(([, , perDegree]) => fromTheLeft(perDegree, 1e6))
});
