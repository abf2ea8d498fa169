import { beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => vi.resetModules());

test('mathjs is loaded with the first arithmetic, not before', async () => {
	let loads = 0;
	vi.doMock('mathjs', async (original) => {
		loads++;
		return await original<typeof import('mathjs')>();
	});
	const { loadReader } = await import('../../../src/lib/engine/quantity/reader.ts');
	const { length } = await import('../../../src/lib/engine/quantity/kinds/length.ts');
	await loadReader();
	expect(length.read('.1+.2').state).toBe('arithmetic');
	expect(length.write(0.3)).toBe('0.300 in');
	expect(await length.work('0.3')).toMatchObject({ said: '0.3 in' });
	expect(await length.work('config({})')).toMatchObject({ state: 'unread' });
	expect(loads).toBe(0);
	expect(await length.work('.1+.2')).toMatchObject({ said: '= 0.3 in' });
	expect(loads).toBe(1);
	vi.doUnmock('mathjs');
});

test('when it cannot be loaded, the entry is unread and says what to do', async () => {
	vi.doMock('../../../src/lib/engine/quantity/worked.ts', () => {
		throw new Error('offline');
	});
	const { length } = await import('../../../src/lib/engine/quantity/kinds/length.ts');
	expect(await length.work('.1+.2')).toEqual({
		state: 'unread',
		why: 'Arithmetic could not be loaded. Write the result itself, or reload the page.'
	});
	vi.doUnmock('../../../src/lib/engine/quantity/worked.ts');
});

test('the reader is loaded with the first text, and until then only empty fields are read', async () => {
	const { length } = await import('../../../src/lib/engine/quantity/kinds/length.ts');
	expect(length.read(' ')).toEqual({ state: 'empty' });
	expect(length.read('1/8')).toEqual({ state: 'arithmetic', text: '1/8' });
	expect(await length.work('1/8')).toMatchObject({ said: '1/8 in' });
	expect(length.read('1/8')).toMatchObject({ said: '1/8 in' });
});

test('when the reader cannot be loaded, the entry is unread and says what to do', async () => {
	vi.doMock('../../../src/lib/engine/quantity/read.ts', () => {
		throw new Error('gone');
	});
	const { length } = await import('../../../src/lib/engine/quantity/kinds/length.ts');
	expect(await length.work('1/8')).toEqual({
		state: 'unread',
		why: 'The reading of answers could not be loaded. Reload the page.'
	});
	vi.doUnmock('../../../src/lib/engine/quantity/read.ts');
});
