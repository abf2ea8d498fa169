import type { TradeFunction } from '../../solver/trade-function.ts';
import * as geometry from '../bend-geometry.ts';
import { joined, text } from '../shown.ts';

/** The number of degrees of an angle. */
export const degrees: TradeFunction = {
	takes: ['angle'],
	gives: 'number',
	run: (angle: number) => angle,
	show: ([angle = []]) =>
		angle.map((part) => (typeof part === 'string' ? part : { ...part, bare: true }))
};

export const setbackK: TradeFunction = {
	takes: ['angle'],
	gives: 'number',
	run: geometry.setbackK,
	show: ([angle = []]) => [
		'<mtext>tan</mtext><mspace width="0.17em"/><mfrac><mrow>',
		...angle,
		'</mrow><mn>2</mn></mfrac>'
	]
};

/** The sine of half an angle, taken for its tangent. */
export const halfSine: TradeFunction = {
	takes: ['angle'],
	gives: 'number',
	run: (angle: number) => Math.sin((angle * Math.PI) / 360),
	show: ([angle = []]) => [
		'<mtext>sin</mtext><mspace width="0.17em"/><mfrac><mrow>',
		...angle,
		'</mrow><mn>2</mn></mfrac>'
	]
};

/** The tangent of half an angle by a calculator set to radians, its sign left out. */
export const halfTangentInRadians: TradeFunction = {
	takes: ['angle'],
	gives: 'number',
	run: (angle: number) => Math.abs(Math.tan(angle / 2)),
	show: ([angle = []]) => [
		'<mtext>tan</mtext><mrow><mo>(</mo><mfrac><mrow>',
		...angle,
		'</mrow><mn>2</mn></mfrac><mtext>rad</mtext><mo>)</mo></mrow>'
	]
};

export const bendAllowance: TradeFunction = {
	takes: ['length', 'length', 'angle'],
	gives: 'length',
	run: geometry.bendAllowance,
	show: ([R = [], T = [], angle = []]) => [
		'<mrow><mo>(</mo><mn>0.01743</mn><mo>×</mo>',
		...R,
		'<mo>+</mo><mn>0.0078</mn><mo>×</mo>',
		...T,
		'<mo>)</mo></mrow><mo>×</mo><mrow><mo>(</mo>',
		...angle,
		'<mo>)</mo></mrow>'
	]
};

export const atEachLeg: TradeFunction = {
	takes: ['length[]', 'length[]'],
	gives: 'length[]',
	run: geometry.atEachLeg,
	show: (shown) => [
		text('one at an outer leg, two at a leg between bends: '),
		...joined(',')(shown)
	]
};
