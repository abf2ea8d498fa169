import { planPanel } from '../../../src/lib/engine/panel/plan.ts';

const target = 100;

/** A panel of some five hundred holes, planned anew as after each change of an input. */
export async function planning(): Promise<void> {
	const members = Array.from({ length: 12 }, (_, i) => ({
		runs: i % 2 ? 'along' : 'across',
		at: `${3 + 3 * i}in`,
		flange: '3/4in',
		thickness: '0.032in'
	}));
	const panel = {
		panel: { length: 48, width: 40, thickness: '0.032in' },
		members,
		greatestPitch: '1in'
	};
	const { holes } = await planPanel(panel);
	const times: number[] = [];
	for (let i = 0; i < 21; i++) {
		const start = performance.now();
		await planPanel(panel);
		times.push(performance.now() - start);
	}
	const median = times.sort((a, b) => a - b)[10] ?? NaN;
	console.log('\n## A panel\n\n| what | ms, median of 21 | target |\n| --- | ---: | ---: |');
	console.log(`| ${holes.length} holes planned | ${median.toFixed(1)} | ${target} |`);
}
