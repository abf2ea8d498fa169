/*
 * The reader: what kinds read with. It is fetched when there is something to read, see reader.ts.
 */

import './kinds/all.ts';

export { readArithmetic } from './arithmetic.ts';
export { dashNames } from './dash-names.ts';
export { drillsAlone, drillsInFigures, drillsNamed } from './drill-names.ts';
export { dashNumbers, headNumbers } from './number-names.ts';
export { unopened } from './opened.ts';
export { normalPartNumber } from './part-number.ts';
export { plainText } from './plain-text.ts';
export { readNumber, readNumbers } from './read-number.ts';
export { oneReading } from './read-one.ts';
export { begunBy, readWordList, readWords } from './read-words.ts';
export type { Field, Option, Reading } from './reading.ts';
