import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import type { Drawing } from '../../../src/lib/engine/figures/drawing.ts';
import { fitted, type Room } from '../../../src/lib/engine/figures/fit.ts';
import { boxOfAny } from '../../../src/lib/engine/figures/side-by-side.ts';
import type { LengthUnit, Value } from '../../../src/lib/engine/quantity/value.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { letteringFaults } from './lettering-faults.ts';
import { manyTasks } from './many-tasks.ts';

/* Figures and what answers do to the metal, made for the places they stand in. */

/** The drawing's place on a phone of 360 pixels at its lowest and with room, and on a laptop. */
const places: readonly Room[] = [
	{ width: 336, height: 135 },
	{ width: 336, height: 230 },
	{ width: 740, height: 290 }
];

/** Where a drawing of what an answer does stands, two side by side. */
const beside: Room = { width: 300, height: 150 };

const drawn = process.env.BUCKTAIL_SLOW ? 100 : 4;

/** A drawing in its place, and in one as high as it asks for where that is too low. */
function inPlace(draw: () => Drawing, room: Room) {
	const first = fitted(draw, room);
	const high = Math.max(room.height, first.high);
	const { drawing, svg } = high > room.height ? fitted(draw, { ...room, height: high }) : first;
	const [, units = 0, tall = 0, width = 0] =
		/viewBox="\S+ \S+ (\d+) (\d+)" width="(\d+)"/.exec(svg)?.map(Number) ?? [];
	const shown = Math.min(width / units, (room.width + 1) / units, (high + 2) / tall);
	return { drawing, high, lettering: 12 * shown };
}

function faultsAt(draw: () => Drawing, room: Room): string[] {
	const { drawing, high, lettering } = inPlace(draw, room);
	return [
		...letteringFaults(drawing),
		...(lettering < 10.9 || lettering > 13.5 ? [`lettering of ${lettering} px`] : []),
		// What is higher would push Check out of view; a chart is as high as its rows.
		...(high > (drawing.isChart ? 250 : 215) && high > room.height ? [`${high} px high`] : [])
	];
}

function figureFaults(task: Task, units: LengthUnit): string[] {
	const { family, method, drawn } = task;
	const say = (key: string, value: Value) => textAt(method, key, value, units);
	return places.flatMap((room) =>
		faultsAt(() => family.figure(drawn.given, say), room).map(
			(fault) => `${task.number} in ${units} at ${room.width}: ${fault}`
		)
	);
}

function metalFaults(task: Task, units: LengthUnit): string[] {
	return task.drawn.asked.flatMap((key) => {
		const wrong = [...task.slips.values()].map((values) => values[key]);
		return wrong.slice(0, 4).flatMap((entered) => {
			if (entered === undefined) return [];
			const effect = effectOf(task, key, entered, units);
			return effect
				? faultsAt(effect.entered.draw, beside).map((fault) => `${task.number} ${key}: ${fault}`)
				: [];
		});
	});
}

describe.each((await loadFamilies()).map((family) => [family.id, family] as const))(
	'%s',
	(_, family) => {
		test.each(levels)('level %i is lettered to be read, its words on nothing', (level) => {
			const tasks = manyTasks(family, level, drawn);
			const faults = tasks.flatMap((task) => [
				...figureFaults(task, 'in'),
				...figureFaults(task, 'mm'),
				...metalFaults(task, 'in')
			]);
			expect(faults.join('\n')).toBe('');
		});
	}
);

test('what stands side by side is made to one scale', async () => {
	const [family] = (await loadFamilies()).filter(({ code }) => code === 'HD');
	const [task] = family ? manyTasks(family, 1, 1) : [];
	if (!task) throw new Error('no task of drill sizes');
	const key = task.drawn.asked[0] ?? '';
	const [entered = 0] = [...task.slips.values()].flatMap((values) => values[key] ?? []);
	const effect = effectOf(task, key, entered);
	if (!effect) throw new Error('nothing drawn');
	const draws = [effect.entered.draw, effect.right.draw];
	const scales = draws.map((draw) => {
		const { shapes } = fitted(draw, beside, () => boxOfAny(draws)).drawing;
		return shapes.flatMap((one) => (one.kind === 'path' && one.line === 'centre' ? one.d : []));
	});
	expect(scales[0]?.length).toBeGreaterThan(0);
	expect(scales[0]).toEqual(scales[1]);
});
