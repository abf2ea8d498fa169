import { circle, rectangle, segment, type Shape, text } from '../drawing.ts';
import { dimensionAcross, dimensionDown, leader } from '../parts/dimension.ts';
import { drillBit } from '../parts/drill-bit.ts';
import { drilledSheet } from '../parts/hole.ts';
import { drivenRivet, setRivet, stackSection } from '../parts/joint.ts';
import { plate, roundFeature } from '../parts/plate.ts';
import { both as u } from '../size.ts';

/*
 * A rivet in two sheets, and a row of rivets from above, with what each word names marked on it. The
 * word stands beside its drawing, so the lettering is short.
 */

const layers = [0.16, 0.16];
const stack = (): Shape[] => stackSection({ layers, width: u(150), scale: u(100) });
const set = (): Shape[] => [...stack(), ...setRivet(u(75), 0.3, 0.72, u(100))];
const driven = (): Shape[] => [
	...stack(),
	...drivenRivet(u(75), 0.3, 0.32, { across: 0.45, high: 0.15 }, u(100))
];

const beside = (thickness: number, label: string): Shape[] =>
	dimensionDown(0, u(thickness), u(150) + 22, u(150), label);

const rows = (...ys: number[]): Shape[] => [
	...plate({ left: 0, top: 0, right: u(170), bottom: u(96) }, 'metal-a', ['left', 'right']),
	...ys.flatMap((y) => [30, 80, 130].map((x) => circle(u(x), u(y), u(9), 'rivet')))
];

export const joints: Readonly<Record<string, () => Shape[]>> = {
	rivet: set,
	grip: () => [...set(), ...beside(32, 'grip')],
	stack: () => [...stack(), ...beside(32, 'stack')],
	layer: () => [...stack(), ...beside(16, 'layer')],
	shank: () => [...set(), ...dimensionDown(u(32), u(72), u(112), [u(90), u(90)], '1.5D')],
	'shop head': () => [...driven(), ...leader(u(97), u(40), u(97) + 20, u(40) + 18, 'shop head')],
	'manufactured head': () => [...driven(), ...leader(u(98), -u(8), u(98) + 20, -u(8) - 14, 'head')],
	'universal head': () => [...set(), ...dimensionAcross(u(45), u(105), -u(26) - 8, -u(8), '2D')],
	'countersunk head': () => [...stack(), ...setRivet(u(75), 0.3, 0.72, u(100), 'countersunk')],
	'rivet diameter': () => [...set(), ...dimensionAcross(u(60), u(90), u(72) + 24, u(72), 'D')],
	'3T': () => [...stack(), ...beside(16, 'T'), ...setRivet(u(75), 0.48, 0.9, u(100))],
	drive: driven,
	'bucking bar': () => [
		...set(),
		rectangle(u(45), u(74), u(60), u(36), 'metal-b'),
		...leader(u(105), u(92), u(105) + 18, u(92) + 12, 'bar')
	],
	'edge distance': () => [
		...plate({ left: 0, top: 0, right: u(150), bottom: u(70) }, 'metal-a', ['left']),
		...roundFeature(u(100), u(35), u(12), 'rivet'),
		...dimensionAcross(u(100), u(150), u(70) + 22, u(70), 'edge distance', { labelAt: 'before' })
	],
	pitch: () => [...rows(48), ...dimensionAcross(u(30), u(80), -14, 0, 'pitch')],
	space: () => [...rows(48), ...dimensionAcross(u(80), u(130), -14, 0, 'space')],
	row: () => [...rows(48), segment(-8, u(48), u(170) + 8, u(48), 'centre')],
	'transverse pitch': () => [
		...rows(26, 70),
		...dimensionDown(u(26), u(70), u(170) + 20, u(140), 'apart')
	],
	'end margin': () => [
		...plate({ left: 0, top: 0, right: u(170), bottom: u(70) }, 'metal-a', ['right']),
		...[34, 84, 134].map((x) => circle(u(x), u(35), u(9), 'rivet')),
		...dimensionAcross(0, u(34), u(70) + 22, u(70), 'end margin', { labelAt: 'after' })
	],
	lap: () => [
		rectangle(0, 0, u(120), u(18), 'metal-a'),
		rectangle(u(60), u(18), u(120), u(18), 'metal-b'),
		...dimensionAcross(u(60), u(120), u(36) + 22, u(36), 'lap')
	],
	'reference edge': () => [
		...plate({ left: 0, top: 0, right: u(170), bottom: u(60) }, 'metal-a', ['right']),
		segment(0, -10, 0, u(60) + 10, 'dim'),
		...dimensionAcross(0, u(60), u(60) + 24, u(60), 'from here', { labelAt: 'after' })
	],
	break: () => [
		rectangle(0, 0, u(180), u(90), 'metal-a'),
		segment(u(90), u(14), u(90), u(76), 'slip'),
		...[58, 122].flatMap((x) => [24, 45, 66].map((y) => circle(u(x), u(y), u(7), 'rivet'))),
		...dimensionDown(u(14), u(76), u(180) + 18, u(92), 'width')
	],
	patch: () => [
		rectangle(0, 0, u(170), u(90), 'metal-a'),
		rectangle(u(45), u(20), u(80), u(50), 'metal-b'),
		...[57, 85, 113].flatMap((x) => [30, 60].map((y) => circle(u(x), u(y), u(5), 'rivet')))
	],
	'pilot hole': () => [
		...drilledSheet(u(75), u(14), { width: u(150), y: 0, thickness: u(26) }),
		...drillBit(u(75), -8, u(12), u(60))
	],
	'final drill': () => [
		...drilledSheet(u(75), u(34), { width: u(150), y: 0, thickness: u(26) }),
		...drillBit(u(75), -8, u(32), u(60))
	],
	clearance: () => [
		...drilledSheet(u(75), u(44), { width: u(150), y: 0, thickness: u(40) }),
		rectangle(u(59), -u(10), u(32), u(64), 'rivet'),
		...leader(u(94), u(36), u(94) + 20, u(36) + 22, 'clearance')
	],
	blank: () => [
		rectangle(0, 0, u(180), u(90), 'waste'),
		rectangle(0, 0, u(80), u(44), 'metal-b'),
		text(u(40), u(22) + 4, 'blank', { anchor: 'middle', tone: 'ink' })
	],
	trim: () => [
		rectangle(0, 0, u(170), u(70), 'hatch'),
		rectangle(u(18), 0, u(134), u(70), 'metal-b'),
		...dimensionAcross(0, u(18), u(70) + 22, u(70), 'trim', { labelAt: 'after' })
	],
	kerf: () => [
		rectangle(0, 0, u(76), u(36), 'metal-b'),
		rectangle(u(86), 0, u(84), u(36), 'metal-a'),
		...dimensionAcross(u(76), u(86), u(36) + 22, u(36), 'kerf', { labelAt: 'after' })
	],
	remnant: () => [
		...[0, 46, 92].map((x) => rectangle(u(x), 0, u(42), u(36), 'metal-b')),
		rectangle(u(138), 0, u(34), u(36), 'waste'),
		...dimensionAcross(u(138), u(172), u(36) + 22, u(36), 'remnant', { labelAt: 'before' })
	]
};
