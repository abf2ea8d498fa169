import { anyLength } from './length.ts';
import { measured } from './measured.ts';

/** The fraction of an inch when it is one of 64ths, else decimal inches: 3/8 in. */
export const fraction = measured({ id: 'fraction', ...anyLength, fractions: true });
