/** A markdown table; the first column is left-aligned, the others right. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
	const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
	const rule = head.map((_, i) => (i === 0 ? '---' : '---:'));
	return [line(head), line(rule), ...rows.map(line)].join('\n');
}
