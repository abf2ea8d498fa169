import { expect, test } from 'vitest';
import { cited } from '../../../src/lib/engine/trade/documents.ts';

test('a source breaks neither inside a page number nor before it', () => {
	const says = cited([{ document: 'airframe', at: 'ch. 4, p. 4-32, Fig. 4-76', standing: 'read' }]);
	expect(says.split(' ').slice(-3)).toEqual([
		'ch.\u00a04,',
		'p.\u00a04-\u206032,',
		'Fig.\u00a04-\u206076'
	]);
});
