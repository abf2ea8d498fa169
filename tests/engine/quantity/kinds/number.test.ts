import { expect, test } from 'vitest';
import { count } from '../../../../src/lib/engine/quantity/kinds/count.ts';
import { number } from '../../../../src/lib/engine/quantity/kinds/number.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();

test.each([
	[number, '5.1 per inch', '5.1'],
	[number, '5.1/in', '5.1'],
	[number, '5.1 rivets per inch', '5.1'],
	[number, '5 1/4 per in.', '5 1/4'],
	[count, '26 each side', '26'],
	[count, '26 rivets each side', '26'],
	[count, '26 per side', '26'],
	[count, '4 holes a row', '4']
])('%#: a number may say of what it is told', (kind, typed, said) => {
	expect(kind.read(typed)).toMatchObject({ state: 'read', said });
});

test.each([
	[number, '5.1 in'],
	[number, '5.1 mm/in'],
	[count, '26 sides'],
	[count, 'each side']
])('%#: but not a size or another thing', (kind, typed) => {
	expect(kind.read(typed).state).toBe('unread');
});
