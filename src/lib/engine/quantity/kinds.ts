/*
 * The kinds that a given or a result may be of, a line each. A kind with a dimension of its own
 * also gets a word in kinds/all.ts.
 */
export { angle } from './kinds/angle.ts';
export { choice } from './kinds/choice.ts';
export { count, diameterDash, headNumber, lengthDash } from './kinds/count.ts';
export { density } from './kinds/density.ts';
export { drill } from './kinds/drill.ts';
export { fraction } from './kinds/fraction.ts';
export { in32nds } from './kinds/in-32nds.ts';
export { length, lengthInFigures } from './kinds/length.ts';
export { listOf } from './kinds/list.ts';
export { load } from './kinds/load.ts';
export { hundredths, number, numberPer } from './kinds/number.ts';
export { order } from './kinds/order.ts';
export { partNumber } from './kinds/part-number.ts';
export { plan } from './kinds/plan.ts';
export { rivetDiameter } from './kinds/rivet-diameter.ts';
export { rivetLength } from './kinds/rivet-length.ts';
export { stress } from './kinds/stress.ts';
export { weight } from './kinds/weight.ts';
export { word } from './kinds/word.ts';
