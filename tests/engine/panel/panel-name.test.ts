import { expect, test } from 'vitest';
import { panelName } from '../../../src/lib/engine/panel/panel-name.ts';

test.each([
	['{"panel":{"name":"Left side"},"members":[{"name":"frame 1"}]}', 'Left side'],
	['{"members":[{"name":"frame 1"}],"panel":{"length":"22in"}}', 'Panel'],
	['{"panel":{"name":""}}', 'Panel'],
	['{"panel":', 'Panel'],
	['null', 'Panel']
])('%s is called %s', (file, name) => {
	expect(panelName(file)).toBe(name);
});
