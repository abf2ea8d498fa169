/* BRIDGE, to go with bridge.ts: kinds write their own values. */

export { format, formatNumber } from './bridge.ts';
export { asFraction, nearest64 } from './sixty-fourths.ts';
