import { circle, rectangle, segment, type Shape, text } from '../drawing.ts';
import { dimensionAcross, dimensionDown, leader } from '../parts/dimension.ts';
import { drillBit } from '../parts/drill-bit.ts';
import { drilledSheet } from '../parts/hole.ts';
import { drivenRivet, setRivet, stackSection } from '../parts/joint.ts';
import { plate, roundFeature } from '../parts/plate.ts';

/* A rivet in two sheets, and a row of rivets from above, with what each word names marked. */

const layers = [0.16, 0.16];
const stack = (): Shape[] => stackSection({ layers, width: 150, scale: 100 });
const set = (): Shape[] => [...stack(), ...setRivet(75, 0.3, 0.72, 100)];
const driven = (): Shape[] => [
	...stack(),
	...drivenRivet(75, 0.3, 0.32, { across: 0.45, high: 0.15 }, 100)
];

const rows = (...ys: number[]): Shape[] => [
	...plate({ left: 0, top: 0, right: 170, bottom: 96 }, 'metal-a', ['left', 'right']),
	...ys.flatMap((y) => [30, 80, 130].map((x) => circle(x, y, 9, 'rivet')))
];

export const joints: Readonly<Record<string, () => Shape[]>> = {
	rivet: set,
	grip: () => [...set(), ...dimensionDown(0, 32, 172, 150, 'grip')],
	stack: () => [...stack(), ...dimensionDown(0, 32, 172, 150, 'stack')],
	layer: () => [...stack(), ...dimensionDown(0, 16, 172, 150, 'layer')],
	shank: () => [...set(), ...dimensionDown(32, 72, 112, [90, 90], 'shank past the grip')],
	'shop head': () => [...driven(), ...leader(97, 40, 124, 62, 'shop head')],
	'manufactured head': () => [...driven(), ...leader(98, -8, 122, -26, 'manufactured head')],
	'universal head': () => [...set(), ...dimensionAcross(45, 105, -34, -8, '2D')],
	'countersunk head': () => [...stack(), ...setRivet(75, 0.3, 0.72, 100, 'countersunk')],
	'rivet diameter': () => [...set(), ...dimensionAcross(60, 90, 96, 72, 'D')],
	'3T': () => [...stack(), ...dimensionDown(0, 16, 172, 150, 'T'), ...setRivet(75, 0.48, 0.9, 100)],
	drive: driven,
	'bucking bar': () => [
		...set(),
		rectangle(45, 74, 60, 36, 'metal-b'),
		...leader(105, 92, 126, 110, 'bucking bar')
	],
	'edge distance': () => [
		...plate({ left: 0, top: 0, right: 150, bottom: 70 }, 'metal-a', ['left']),
		...roundFeature(100, 35, 12, 'rivet'),
		...dimensionAcross(100, 150, 94, 70, 'edge distance', { labelAt: 'after' })
	],
	pitch: () => [...rows(48), ...dimensionAcross(30, 80, -14, 0, 'pitch')],
	space: () => [...rows(48), ...dimensionAcross(80, 130, -14, 0, 'space')],
	row: () => [...rows(48), segment(-8, 48, 178, 48, 'centre')],
	'transverse pitch': () => [...rows(26, 70), ...dimensionDown(26, 70, 192, 140, 'between rows')],
	'end margin': () => [
		...plate({ left: 0, top: 0, right: 170, bottom: 70 }, 'metal-a', ['right']),
		...[34, 84, 134].map((x) => circle(x, 35, 9, 'rivet')),
		...dimensionAcross(0, 34, 92, 70, 'end margin', { labelAt: 'after' })
	],
	lap: () => [
		rectangle(0, 0, 120, 18, 'metal-a'),
		rectangle(60, 18, 120, 18, 'metal-b'),
		...dimensionAcross(60, 120, 60, 36, 'lap')
	],
	'reference edge': () => [
		...plate({ left: 0, top: 0, right: 170, bottom: 60 }, 'metal-a', ['right']),
		segment(0, -10, 0, 70, 'dim'),
		...dimensionAcross(0, 60, 86, 60, 'every size from here', { labelAt: 'after' })
	],
	break: () => [
		rectangle(0, 0, 180, 90, 'metal-a'),
		segment(90, 14, 90, 76, 'slip'),
		...[58, 122].flatMap((x) => [24, 45, 66].map((y) => circle(x, y, 7, 'rivet'))),
		...dimensionDown(14, 76, 200, 92, 'width')
	],
	patch: () => [
		rectangle(0, 0, 170, 90, 'metal-a'),
		rectangle(45, 20, 80, 50, 'metal-b'),
		...[57, 85, 113].flatMap((x) => [30, 60].map((y) => circle(x, y, 5, 'rivet')))
	],
	'pilot hole': () => [
		...drilledSheet(75, 14, { width: 150, y: 0, thickness: 26 }),
		...drillBit(75, -8, 12, 60)
	],
	'final drill': () => [
		...drilledSheet(75, 34, { width: 150, y: 0, thickness: 26 }),
		...drillBit(75, -8, 32, 60)
	],
	clearance: () => [
		...drilledSheet(75, 44, { width: 150, y: 0, thickness: 40 }),
		rectangle(59, -10, 32, 64, 'rivet'),
		...leader(94, 36, 118, 62, 'clearance')
	],
	blank: () => [
		rectangle(0, 0, 180, 90, 'waste'),
		rectangle(0, 0, 80, 44, 'metal-b'),
		text(40, 27, 'blank', { anchor: 'middle', tone: 'ink' })
	],
	trim: () => [
		rectangle(0, 0, 170, 70, 'hatch'),
		rectangle(18, 0, 134, 70, 'metal-b'),
		...dimensionAcross(0, 18, 92, 70, 'trim', { labelAt: 'after' })
	],
	kerf: () => [
		rectangle(0, 0, 76, 36, 'metal-b'),
		rectangle(86, 0, 84, 36, 'metal-a'),
		...dimensionAcross(76, 86, 58, 36, 'kerf', { labelAt: 'after' })
	],
	remnant: () => [
		...[0, 46, 92].map((x) => rectangle(x, 0, 42, 36, 'metal-b')),
		rectangle(138, 0, 34, 36, 'waste'),
		...dimensionAcross(138, 172, 58, 36, 'remnant')
	]
};
