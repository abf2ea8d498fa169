import fc from 'fast-check';
import * as v from 'valibot';
import { expect, test } from 'vitest';
import { loadFamilies } from '../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../src/lib/engine/families/level.ts';
import { collect } from '../../src/lib/engine/sets/collect.ts';
import { openSet } from '../../src/lib/engine/sets/open-set.ts';
import { plainTerms } from '../../src/lib/engine/sets/compose.ts';
import { drawTask, stepsOf } from '../../src/lib/engine/tasks/task.ts';
import { readCsv, writeCsv } from '../../src/lib/exchange/csv.ts';
import { dueCalendar } from '../../src/lib/exchange/due-date.ts';
import { qtiPackage } from '../../src/lib/exchange/qti/package.ts';
import { xapiStatements } from '../../src/lib/exchange/xapi.ts';
import { readICalendar } from '../engine/schedule/read-icalendar.ts';
import { handInOf } from '../engine/sets/hand-ins.ts';
import { anySet } from '../engine/sets/set-arbitrary.ts';
import { faultIn } from './qti/validate.ts';
import { statement } from './xapi-statement.ts';

/* Ten thousand exports of each format. */
const many = 10_000;

test('QTI items, drawings and manifests, and xAPI statements', { timeout: 900_000 }, async () => {
	const kinds = (await loadFamilies()).flatMap((family) =>
		levels.map((level) => ({ family, level }))
	);
	let [items, statements] = [0, 0];
	for (let seed = 0; items < many || statements < many; seed++) {
		const tasks = kinds.slice((seed % 2) * 40, (seed % 2) * 40 + 40).map(({ family, level }) => {
			const task = drawTask(family, level, seed * 31);
			return { number: task.number, marks: stepsOf(task).map((_, i) => (seed + i) % 3) };
		});
		const answers = seed % 3 === 0 ? 'options' : 'typed';
		const open = await openSet({ ...plainTerms(`Set ${seed}`), answers, tasks });
		for (const [name, text] of qtiPackage(open).files) {
			if (!/\.(xml|svg)$/.test(name)) continue;
			expect(faultIn(name, text)).toBeNull();
			items += Number(name.startsWith('items/'));
		}
		const found = [{ file: 'x', handIn: await handInOf(open, 'B05') }];
		const { handIns } = await collect(open, found);
		for (const one of xapiStatements(open, handIns, { now: '2026-12-04T16:00:00.000Z' })) {
			v.parse(statement, JSON.parse(JSON.stringify(one)));
			statements++;
		}
	}
});

test('tables', { timeout: 600_000 }, () => {
	const cell = fc.string({ unit: 'grapheme', maxLength: 8 }).map((text) => `x${text}x`);
	const rows = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 4 });
	fc.assert(
		fc.property(rows, (table) => {
			const all = [['a', 'b', 'c'], ...table];
			expect(readCsv(writeCsv(all))).toEqual({ ok: true, rows: all });
		}),
		{ numRuns: many }
	);
});

test('calendars', { timeout: 600_000 }, () => {
	fc.assert(
		fc.property(anySet, fc.nat(2 ** 40), (set, stamp) => {
			const text = dueCalendar(set, stamp, 'https://school.example/sets/#2.z.x');
			expect(text === null).toBe(set.due === null);
			if (text !== null) expect(readICalendar(text)[0]?.summary).toBe(`Due: ${set.title}`);
		}),
		{ numRuns: many }
	);
});
