import { expect, test } from 'vitest';
import { escaped } from '../../../src/lib/engine/solver/markup.ts';

test('no sign of markup is left in the words', () => {
	expect(escaped('<b title="&lt;">1/2 & 3</b>')).toBe(
		'&lt;b title=&quot;&amp;lt;&quot;&gt;1/2 &amp; 3&lt;/b&gt;'
	);
	expect(escaped('1/16 in ½ “D”')).toBe('1/16 in ½ “D”');
});
