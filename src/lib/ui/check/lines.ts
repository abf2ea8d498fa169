/** Readings as they were entered, a feature each: by lines, semicolons, or commas before a space. */
export function linesOf(text: string): string[] {
	return text
		.split(/[;\n]+|,\s+/)
		.map((line) => line.trim())
		.filter(Boolean);
}
