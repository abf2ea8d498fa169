import { describe, expect, test } from 'vitest';
import { sayVerdict } from '../../../src/lib/engine/marking/say.ts';
import { stripTask } from './strip.ts';
import { verdictsOn } from './typed-answers.ts';

function told(key: string, text: string): string {
	const verdict = verdictsOn(stripTask, { [key]: text })[key];
	if (verdict?.kind !== 'rework') return verdict?.kind ?? 'none';
	const { cause } = verdict;
	if (cause.kind === 'factor') return `${cause.times} × ${cause.of}`;
	return cause.kind === 'slip' ? cause.slips.join('+') : cause.kind;
}

describe('the factor of a rule for the size', () => {
	test.each([
		['threeT', '3', '3 × thickest'],
		['threeT', '3T', '3 × thickest'],
		// T is the thickest sheet, and no other letter is.
		['threeT', '5 D', 'unknown'],
		['threeT', '4T', 'four'],
		['half', '1.4', '1.4 × D'],
		['half', '1.4D', '1.4 × D'],
		// A number on a rule is a size.
		['half', '7/5', 'unknown'],
		['fine', '1.2345', 'unknown'],
		['twenty', '20', '20 × D'],
		['more', '21', 'unknown'],
		// Once a size is the size.
		['alike', '1.25', 'accept'],
		['sum', '3', 'unknown'],
		['sum', '1', 'unknown'],
		['nothing', '2', 'unknown'],
		// Numbers of things are no sizes.
		['run', '4', 'other-step'],
		['share', '3', 'unknown'],
		['spaces', '3', 'unknown']
	])('%s %s: %s', (key, text, cause) => {
		expect(told(key, text)).toBe(cause);
	});

	test.each([
		['threeT', '3', '3 is the factor of the rule; multiply it by “Thickest layer”.'],
		['half', '1.4', '1.4 D is the rule; multiply by D.']
	])('%s %s is told: %s', (key, text, says) => {
		const verdict = verdictsOn(stripTask, { [key]: text })[key];
		expect(verdict && sayVerdict(stripTask, verdict, key)).toBe(says);
	});
});

describe('slips that come to one number', () => {
	test('are one act where they do so with other sizes too', () => {
		expect(verdictsOn(stripTask, { left: '.05' }).left).toMatchObject({
			cause: { kind: 'either', slips: ['oneLeftOut', 'byWidth'] }
		});
	});
});
