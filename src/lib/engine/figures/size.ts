/*
 * Metal is drawn as large as its place allows; lettering, arrows and the gaps beside them keep their
 * size. All that gives metal a size on paper takes it from here, so that no figure, and none of its
 * parts, has to hand the place on.
 */

/** How many times its plain size metal is drawn, either way. */
export interface Growth {
	readonly across: number;
	readonly down: number;
}

let growth: Growth = { across: 1, down: 1 };

/** A size of metal across the paper, given in drawing units as it is where nothing grows. */
export function across(units: number): number {
	return units * growth.across;
}

/** The same down the paper. */
export function down(units: number): number {
	return units * growth.down;
}

/** The same of what is as large both ways, a diameter or a scale. */
export function both(units: number): number {
	return units * Math.min(growth.across, growth.down);
}

/** What is drawn while metal is of this size. */
export function grownBy<T>(by: Growth, draw: () => T): T {
	const before = growth;
	growth = by;
	try {
		return draw();
	} finally {
		growth = before;
	}
}
