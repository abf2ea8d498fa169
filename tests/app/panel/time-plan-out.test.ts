import { describe, expect, test } from 'vitest';
import { readQuestions, writeQuestions } from '../../../src/lib/app/panel/questions-link.ts';
import { timeEntries } from '../../../src/lib/app/panel/time-calendar.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import { icalendar } from '../../../src/lib/engine/schedule/icalendar.ts';
import { layOut, momentOf } from '../../../src/lib/engine/time-plan/lay-out.ts';
import { emptySettings } from '../../../src/lib/engine/time-plan/saved.ts';

const day = '2026-11-26';
const settings = {
	...emptySettings,
	due: { day: '2026-11-30', time: 660 },
	times: [
		{ day, from: 840, to: 900 },
		{ day: '2026-11-27', from: 540, to: 600 }
	],
	questions: [
		{ id: 'q', text: 'May it run further?', step: 'pilot', answer: '' },
		{ id: 'r', text: 'Prime first?', step: 'pilot', answer: 'Yes.' }
	]
};
const step = (id: string, left: number) => ({
	...{ id, name: id, guess: left, minutes: left, left, state: 'open' as const },
	...{ isOwn: false, canWait: false, isOut: false }
});

describe('a time plan taken away', () => {
	test('every stretch of a step is an entry, and keeps its id when it is made again', () => {
		const layout = layOut([step('pilot', 90)], settings, momentOf(day, 0));
		const numberOf = () => 4;
		const entries = timeEntries({ panel: 'p', name: 'Side', layout, settings, numberOf });
		expect(entries).toEqual([
			{
				uid: 'pilot-1-p',
				day: dayOf(day),
				time: { start: 840, minutes: 60 },
				summary: '4. pilot (Side)',
				description: 'Ask first: May it run further?'
			},
			{
				uid: 'pilot-2-p',
				day: dayOf('2026-11-27'),
				time: { start: 540, minutes: 30 },
				summary: '4. pilot, go on (Side)',
				description: 'Ask first: May it run further?'
			},
			{
				uid: 'due-p',
				day: dayOf('2026-11-30'),
				time: { start: 660, minutes: 15 },
				summary: 'Hand in: Side'
			}
		]);
		expect(icalendar(entries, 0)).toContain('DTSTART:20261127T090000\r\nDURATION:PT30M');
	});

	test('questions come out of their link as they went in; a damaged link is told', async () => {
		const sheet = {
			panel: '{"panel":{"length":"22"}}',
			questions: [{ text: 'May it run further? ½', step: 'Pilot 51 holes', before: 'now' }]
		};
		const fragment = await writeQuestions(sheet);
		expect(await readQuestions(`#${fragment}`)).toEqual(sheet);
		expect(await readQuestions(fragment.slice(0, -2))).toMatch(/damaged or cut short/);
		expect(await readQuestions(fragment.replace(/^2/, '3'))).toMatch(/Update Bucktail/);
		expect(await readQuestions(await writeQuestions({ ...sheet, questions: [] }))).toMatch(
			/damaged/
		);
	});
});
