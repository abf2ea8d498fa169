import { expect, test } from 'vitest';
import { drillSize } from '../../../src/lib/engine/methods/drill-size.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';

/** Sizes printed elsewhere than in the drill chart of FAA-H-8083-31B, Fig. 4-47. */
const rows = [
	{ from: '1940s service handbook, section I par. 16', drill: 'No. 52', size: 0.0635 },
	{ from: '1940s service handbook, section I par. 16', drill: 'No. 41', size: 0.096 },
	{ from: '1940s service handbook, section I par. 16', drill: 'No. 30', size: 0.1285 },
	{ from: '1940s service handbook, section I par. 16', drill: 'No. 22', size: 0.157 },
	{ from: '1940s service handbook, section I par. 16', drill: 'No. 12', size: 0.189 },
	{ from: 'TM 9-2320-363-34-2, Table 8', drill: 'No. 40', size: 0.098 },
	{ from: 'FAA-H-8083-31B Fig. 4-90', drill: 'No. 21', size: 0.159 },
	{ from: 'FAA-H-8083-31B Fig. 4-90', drill: 'No. 11', size: 0.191 },
	{ from: 'FAA-H-8083-31B Fig. 4-90', drill: 'F', size: 0.257 }
];

test.each(rows)('published, $from: $drill is $size in', ({ drill, size }) => {
	expect(evaluate(drillSize, { drill }).size).toBe(size);
});

const chart = [
	...[...'ZYXWVUTSRQPONMLKJIHGFEDCBA'],
	...Array.from({ length: 60 }, (_, i) => `No. ${i + 1}`)
];

test('down the chart every drill is smaller, by 0.001 in or more', () => {
	const sizes = chart.map((drill) => Number(evaluate(drillSize, { drill }).size));
	sizes.slice(1).forEach((size, i) => {
		expect((sizes[i] ?? 0) - size).toBeGreaterThan(0.001 - 1e-9);
	});
});

test('the next fraction drill up is the first 64th that is not smaller', () => {
	for (const drill of chart) {
		const { size, fraction } = evaluate(drillSize, { drill });
		const tenThousandths = Math.round(Number(size) * 10_000);
		let sixtyFourths = 1;
		while (sixtyFourths * 10_000 < tenThousandths * 64) sixtyFourths++;
		expect(fraction, drill).toBe(sixtyFourths / 64);
	}
});

test('the next fraction drill down is the last 64th that is not larger', () => {
	for (const drill of chart) {
		const { size, under } = evaluate(drillSize, { drill });
		const tenThousandths = Math.round(Number(size) * 10_000);
		let sixtyFourths = 64;
		while (sixtyFourths * 10_000 > tenThousandths * 64) sixtyFourths--;
		expect(under, drill).toBe(sixtyFourths / 64);
	}
});

test('a name without a drill is refused in one sentence', () => {
	for (const drill of ['No. 61', 'No. 0', 'AA', '']) {
		expect(() => evaluate(drillSize, { drill })).toThrow(
			/^The drill chart has no row for .*: write a number from No. 1 .*\.$/
		);
	}
});
