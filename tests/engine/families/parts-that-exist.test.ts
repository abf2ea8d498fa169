import { describe, expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { broken, facts, type Job } from '../../../src/lib/engine/trade/parts-that-exist/index.ts';
import { isThickEnough } from '../../../src/lib/engine/trade/parts-that-exist/layers.ts';
import { rivetsPerInch } from '../../../src/lib/engine/trade/tables/rivets-per-inch.ts';
import { howMany } from './how-many.ts';
import { jobIn } from './job-in-task.ts';

const families = await loadFamilies();

/** The facts that draws of a family break, with a task for each. */
function brokenBy(family: (typeof families)[number]): Map<string, string> {
	const found = new Map<string, string>();
	for (const level of levels) {
		for (let seed = 0; seed < howMany; seed++) {
			const task = drawTask(family, level, seed * 3491);
			const job = jobIn(task);
			for (const { id, says } of broken(job)) {
				if (!found.has(id)) found.set(id, `${task.number} ${says} ${JSON.stringify(job)}`);
			}
		}
	}
	return found;
}

test.each(families.map((family) => [family.id, family] as const))(
	'%s draws parts and jobs that exist',
	(_, family) => {
		expect([...brokenBy(family).values()]).toEqual([]);
	}
);

describe('every fact can be broken', () => {
	const layers = (...of: readonly (readonly [string, number])[]) =>
		of.map(([name, T]) => ({ name, T }));
	const jobs: Readonly<Record<string, Job>> = {
		'joint.splice': { story: '', layers: layers(['Patch', 0.032], ['Skin', 0.04]) },
		'joint.splice-most': { story: '', layers: layers(['Patch', 0.063], ['Skin', 0.025]) },
		'joint.structure': { story: '', layers: layers(['Skin', 0.063], ['Stringer', 0.02]) },
		'joint.skins': { story: '', layers: layers(['Upper skin', 0.02], ['Lower skin', 0.05]) },
		'joint.cap': { story: '', layers: layers(['Skin', 0.05], ['Spar cap', 0.04]) },
		'gauge.layer': { story: '', layers: layers(['Skin', 0.08], ['Stringer', 0.05]) },
		'gauge.story': { story: 'The two halves of a cowl lap.', T: 0.08 },
		'sheet.batch': { story: '', blanks: 61, cautions: ['shear'] },
		'rivet.quarter': { story: '', T: 0.063, D: 1 / 4 },
		'rivet.heavy': { story: 'A door skin is drilled.', D: 3 / 16 },
		'rivet.length': { story: '', D: 1 / 8, length: 3 / 4 },
		'joint.shim': {
			story: '',
			layers: layers(['Skin', 0.032], ['Shim', 0.063], ['Spar cap', 0.05])
		},
		'joint.alike': { story: '', layers: layers(['Bracket', 0.016], ['Doubler', 0.08]) },
		'joint.hinge': {
			story: '',
			layers: layers(['Hinge leaf', 0.04], ['Spar web', 0.04]),
			D: 0.1875
		},
		'rivet.size': { story: '', T: 0.02, D: 0.25 },
		'rivet.thin-sheet': {
			story: '',
			layers: layers(['Bracket', 0.08], ['Bulkhead web', 0.02]),
			D: 0.25
		},
		'rivet.1100': { story: 'A spar splice.', letters: 'A' },
		'rivet.small-2024': { story: '', letters: 'DD', D: 1 / 8 },
		'sheet.soft': { story: 'A wing skin.', alloy: '3003-H14' },
		'sheet.heavy': { story: 'The two halves of a cowl lap.', alloy: '7075-T6' },
		'sheet.annealed': { story: 'A clip is bent.', alloy: '2024-O', heatTreated: false },
		'hole.pilot': { story: 'The drill wanders in thick plate.', inTwo: [3 / 32, 0.0995] },
		'hole.in-two': { story: 'A hole is drilled and reamed.', inTwo: [5 / 64, 0.0785] },
		'rivet.firewall': { story: 'A stiffener goes onto a firewall panel.', letters: 'AD' },
		'bend.brake': { story: '', bend: 150 },
		'bend.clamped': { story: '', clamped: 0.1 },
		'bar.remnant': { story: '', remnant: 0 },
		'lift.two': { story: 'Two people lift it.', weight: 20 },
		'snips.gauge': { story: 'Cut with aviation snips.', T: 0.063 },
		'snips.caution': { story: 'Cut with snips.', cautions: ['shear'] }
	};

	test.each(facts.map(({ id }) => id))('%s', (id) => {
		expect(broken(jobs[id] ?? { story: '' }).map((fact) => fact.id)).toContain(id);
	});

	test('5052 is not taken for a spar clip', () => {
		const job = { story: 'An angle clip ties a rib to the spar web.', alloy: '5052-H34', T: 0.04 };
		expect(broken(job).map(({ id }) => id)).toEqual(['sheet.soft']);
	});

	test.each([
		['A wing skin is replaced.', '7075-T6', []],
		['A gusset ties a rib to the spar.', '2014-T6', []],
		['A clip ties a rib to the skin.', '2014-T6', ['sheet.heavy']],
		['A new access plate is riveted to its frame.', '7075-T6', ['sheet.heavy']]
	])('%s of %s', (story, alloy, ids) => {
		expect(broken({ story, alloy }).map(({ id }) => id)).toEqual(ids);
	});

	test('a skin among the layers is told of no alloy of heavy structure', () => {
		const stack = layers(['Skin', 0.032], ['Spar cap', 0.05]);
		const job = { story: 'A shim goes between.', layers: stack, alloy: '7075-T6' };
		expect(broken(job).map(({ id }) => id)).toEqual(['sheet.heavy']);
	});

	test('annealed 2024 that is heat treated after bending is sound', () => {
		expect(broken({ story: 'A clip is bent.', alloy: '2024-O', heatTreated: true })).toEqual([]);
	});

	test('a baffle gets no rivet over the size by 3T, and that one where it is large', () => {
		const story = 'A baffle is cut through.';
		const ids = (T: number, D: number) => broken({ story, T, D }).map(({ id }) => id);
		expect(ids(0.05, 3 / 16)).toEqual(['rivet.heavy']);
		expect(ids(0.05, 5 / 32)).toEqual([]);
		expect(ids(0.06, 3 / 16)).toEqual([]);
	});

	test.each(['D', 'DD'])('a %s rivet is not called out for a door', (letters) => {
		const job = { story: 'A door skin is drilled.', D: 5 / 32, letters };
		expect(broken(job).map(({ id }) => id)).toEqual(['rivet.heavy']);
	});

	test.each([
		['a rivet under 2.5T', { story: '', T: 0.063, D: 1 / 8 }],
		['a rivet under 3/32 in', { story: '', T: 0.016, D: 1 / 16 }]
	])('%s', (_, job) => {
		expect(broken(job).map(({ id }) => id)).toEqual(['rivet.size']);
	});

	test('a shim may be as thin as it must', () => {
		const story = 'A shim goes under a spar cap.';
		const stack = layers(['Skin', 0.05], ['Shim', 0.016], ['Spar cap', 0.063]);
		expect(broken({ story, layers: stack, D: 3 / 16 })).toEqual([]);
	});

	test('the thinnest sheets are those of the table of rivets per inch', () => {
		for (const [column, [D]] of rivetsPerInch.columns.keys.entries()) {
			const least = rivetsPerInch.rows.keys.findIndex(
				(_, row) => rivetsPerInch.cells[row]?.[column] !== null
			);
			const thinnest = Number(rivetsPerInch.rows.keys[least]);
			expect(isThickEnough([{ name: '', T: thinnest }], Number(D))).toBe(true);
			expect(isThickEnough([{ name: '', T: thinnest - 0.001 }], Number(D))).toBe(false);
		}
	});

	test('and the facts let a usual joint be', () => {
		const story = 'A patch goes on a wing skin over a stringer.';
		const stack = layers(['Patch', 0.04], ['Skin', 0.032], ['Stringer', 0.05]);
		expect(broken({ story, layers: stack, D: 5 / 32, letters: 'AD' })).toEqual([]);
	});
});
