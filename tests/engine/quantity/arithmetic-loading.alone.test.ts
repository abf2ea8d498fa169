import { beforeEach, expect, test, vi } from 'vitest';
import { fields } from './corpus.ts';

beforeEach(() => vi.resetModules());

test('mathjs is loaded with the first arithmetic, not before', async () => {
	let loads = 0;
	vi.doMock('mathjs', async (original) => {
		loads++;
		return await original<typeof import('mathjs')>();
	});
	const { read } = await import('../../../src/lib/engine/quantity/read.ts');
	const { format } = await import('../../../src/lib/engine/quantity/format.ts');
	const { readArithmetic } = await import('../../../src/lib/engine/quantity/arithmetic.ts');
	expect(read('.1+.2', fields.length).state).toBe('arithmetic');
	expect(format(0.3, 'thousandth')).toBe('0.300 in');
	expect(await readArithmetic('0.3', fields.length)).toMatchObject({ said: '0.3 in' });
	expect(await readArithmetic('config({})', fields.length)).toMatchObject({ state: 'unread' });
	expect(loads).toBe(0);
	expect(await readArithmetic('.1+.2', fields.length)).toMatchObject({ said: '= 0.3 in' });
	expect(loads).toBe(1);
	vi.doUnmock('mathjs');
});

test('when it cannot be loaded, the entry is unread and says what to do', async () => {
	vi.doMock('../../../src/lib/engine/quantity/worked.ts', () => {
		throw new Error('offline');
	});
	const { readArithmetic } = await import('../../../src/lib/engine/quantity/arithmetic.ts');
	expect(await readArithmetic('.1+.2', fields.length)).toEqual({
		state: 'unread',
		why: 'Arithmetic cannot be loaded without a network yet. Write the result itself.'
	});
	vi.doUnmock('../../../src/lib/engine/quantity/worked.ts');
});
