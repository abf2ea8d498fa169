const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export const tan = (degrees: number): number => Math.tan(radians(degrees));
export const sin = (degrees: number): number => Math.sin(radians(degrees));

/** K of a bend, counted from flat: FAA-H-8083-31B, ch. 4, p. 4-63. */
export const kOf = (angle: number): number => tan(angle / 2);

/** FAA-H-8083-31B, ch. 4, p. 4-64. */
export const allowanceOf = (R: number, T: number, angle: number): number =>
	(0.01743 * R + 0.0078 * T) * angle;

/** To five places, as K stands in the chart. */
export const kTyped = (value: number): string => `${Number(value.toFixed(5))}`;
