/** Blanks that are cut from one sheet in one go, by what cuts them: common practice. */
export const mostInOneBatch = { shear: 60, saw: 120 } as const;

/** Whether so many blanks, by area, are cut from one sheet in one go. */
export function isOneBatch(blanks: number, tool: keyof typeof mostInOneBatch): boolean {
	return blanks <= mostInOneBatch[tool];
}
