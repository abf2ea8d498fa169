import { describe, expect, test } from 'vitest';
import { loadFamilies, loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import { bench } from '../../../src/lib/engine/lessons/bench.ts';
import { isDrawn } from '../families/drawing-faults.ts';
import {
	endsOf,
	move,
	reachOf,
	type Way,
	waysOf,
	workedBy
} from '../../../src/lib/engine/lessons/lesson.ts';
import { drawingOf } from '../../../src/lib/engine/lessons/lettered.ts';
import { valueUnder } from '../../../src/lib/engine/lessons/hand.ts';
import { slipShown, slipsOf } from '../../../src/lib/engine/lessons/slips.ts';

const families = await loadFamilies();
const ways = families.flatMap(waysOf);
const named = ways.map((way) => [`${way.family.id}: ${way.method.id}`, way] as const);

/** The numbers a lesson begins with, and those with one given at an end of its way. */
function numbersOf(way: Way) {
	const { given } = way.start;
	return [
		given,
		...way.hands.flatMap((hand) =>
			endsOf(way, given, hand).map((value) => move(way, given, hand, value))
		)
	];
}

/** The same with every given at its least, and every one at its greatest, as far as they go. */
function farNumbersOf(way: Way) {
	const { given } = way.start;
	return [0, -1].map((end) =>
		way.hands.reduce(
			(now, hand) => move(way, now, hand, endsOf(way, now, hand).at(end) ?? ''),
			given
		)
	);
}

/** A part at the end of its sizes may be drawn narrower or longer than one of a task. */
const room = { least: 40, most: 800 };

test('every method has a lesson', async () => {
	const taught = ways.map(({ method }) => Object.keys(method.steps));
	const missing = (await loadMethods()).filter(
		({ steps }) => !taught.some((keys) => Object.keys(steps).every((key) => keys.includes(key)))
	);
	expect(missing).toEqual([]);
});

test('a lesson begins with the plainest numbers of the easiest level', () => {
	const begun = (id: string) => ways.find(({ family }) => family.id === id)?.start.given;
	expect(begun('setback')).toMatchObject({ angle: 90, R: 1 / 8 });
	// Not with a metric gauge, which only harder tasks have.
	expect(begun('rivet-diameter')).toEqual({ thickest: 0.04 });
});

test('every family says in two or three sentences what it is for', () => {
	const silent = families.filter(({ id }) => !Object.hasOwn(bench, id));
	expect(silent.map(({ id }) => `write what ${id} is for into lessons/bench.ts`)).toEqual([]);
	const gone = Object.keys(bench).filter((id) => !families.some((family) => family.id === id));
	expect(gone.map((id) => `lessons/bench.ts: no family is called ${id}`)).toEqual([]);
	for (const [id, says] of Object.entries(bench)) {
		expect(says.match(/[.](?= |$)/g)?.length ?? 0, id).toBeOneOf([2, 3]);
		expect(says.length, id).toBeLessThan(260);
	}
});

describe.each(named)('%s', (_, way) => {
	test('begins with sound numbers, each given that tasks vary under the hand', () => {
		const { method, start, draws, hands } = way;
		const varies = (key: string) =>
			new Set(draws.map(({ given }) => JSON.stringify(given[key]))).size > 1;
		expect(workedBy(method, start.given)).not.toBeNull();
		expect(new Set(hands.map(({ key }) => key))).toEqual(
			new Set(Object.keys(method.given).filter(varies))
		);
		for (const hand of hands) {
			expect(reachOf(way, start.given, hand)).toContain(valueUnder(start.given, hand));
		}
	});

	test('moves every given somewhere, and draws and works both ends', () => {
		for (const hand of way.hands) {
			expect(reachOf(way, way.start.given, hand).length, hand.label).toBeGreaterThan(1);
		}
		for (const given of numbersOf(way)) {
			expect(workedBy(way.method, given)).not.toBeNull();
			expect(isDrawn(drawingOf(way, given, way.start.given))).toBe(true);
			expect(isDrawn(drawingOf(way, given, way.start.given, 'mm'))).toBe(true);
		}
	});

	test.runIf(way.family.topic === 'bends')(
		'what a slip does is told to the last digit, for the right number stands beside it',
		() => {
			const right = workedBy(way.method, way.start.given) ?? {};
			for (const [id] of slipsOf(way)) {
				const says = slipShown(way, way.start.given, right, id).effect?.entered.says ?? '';
				expect(says).not.toMatch(/(about|less than) [\d/]+ in too/);
			}
		}
	);

	test('every slip gives another number, or says that none shows', () => {
		const slips = slipsOf(way);
		expect(slips.length).toBeGreaterThan(1);
		for (const given of [way.start.given, ...farNumbersOf(way)]) {
			const right = workedBy(way.method, given) ?? {};
			for (const [id] of slips) {
				const { at, effect } = slipShown(way, given, right, id);
				if (at) expect(at.wrong).not.toEqual(at.right);
				if (effect) {
					expect(isDrawn(effect.entered.drawing, room)).toBe(true);
					expect(isDrawn(effect.right.drawing, room)).toBe(true);
				}
			}
		}
		const begun = workedBy(way.method, way.start.given) ?? {};
		const shown = slips.filter(([id]) => slipShown(way, way.start.given, begun, id).at);
		expect(shown.length).toBeGreaterThan(1);
	});
});
