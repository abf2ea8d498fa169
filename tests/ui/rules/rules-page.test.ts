import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { topicIds } from '../../../src/lib/engine/families/topics.ts';
import { rules, rulesByTopic } from '../../../src/lib/engine/trade/rules.ts';
import { cite } from '../../../src/lib/engine/trade/documents.ts';
import { tables } from '../../../src/lib/engine/trade/tables.ts';
import RulesPage from '../../../src/routes/rules/+page.svelte';

const page = render(RulesPage).body;

/** What can be read in a piece of the page. */
function read(html: string): string {
	return html
		.replace(/<!--.*?-->/g, '')
		.replace(/<[^>]*>/g, ' ')
		.replace(/&amp;/g, '&')
		.replace(/&lt;/g, '<')
		.replace(/\s+/g, ' ');
}

/** The part of the page about one table. */
function partAbout(id: string): string {
	const start = page.indexOf(`id="table-${id}"`);
	return start < 0 ? '' : page.slice(start, page.indexOf('</section>', start));
}

test('every rule stands on the page, under its topic', () => {
	const text = read(page);
	expect(Object.keys(rulesByTopic).filter((topic) => !topicIds.some((id) => id === topic))).toEqual(
		[]
	);
	for (const { says, sources } of Object.values(rules)) {
		expect(text).toContain(read(says));
		expect(text).toContain(read(sources.map(cite).join('; ')));
	}
});

describe.each(tables.map((table) => ({ id: table.id, table })))('$id', ({ id, table }) => {
	const part = partAbout(id);
	const rows =
		part
			.split(/<tbody[^>]*>/)[1]
			?.split('</tr>')
			.slice(0, -1) ?? [];

	test('is listed under a topic that there is, by its title and source', () => {
		expect(topicIds).toContain(table.topic);
		expect(read(part)).toContain(table.title);
		expect(read(part)).toContain(cite(table.source));
	});

	test('has every cell that is printed', () => {
		expect(rows).toHaveLength(table.rows.keys.length);
		rows.forEach((row, i) => {
			const cells = row.split('<td').slice(1, 1 + table.columns.keys.length);
			expect(cells).toHaveLength(table.columns.keys.length);
			cells.forEach((cell, j) => {
				const value = table.cells[i]?.[j] ?? null;
				const shown = read(`<td${cell}`).replace('†', '').trim();
				expect(shown).toBe(value === null ? '' : table.holds[j]?.write(value));
			});
		});
	});

	test('marks every suspect cell, and says why', () => {
		expect(read(rows.join('')).split('†').length - 1).toBe(table.suspect.length);
		for (const { why } of table.suspect) expect(read(part)).toContain(why);
	});

	test('tells of rows that stand elsewhere', () => {
		for (const own of table.rowSources.values()) expect(read(part)).toContain(cite(own));
	});
});
