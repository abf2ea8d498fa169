import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeAdvice } from '../../src/scripts/node-version.js';
import { Advice, adviceOn } from '../../src/scripts/project.js';

test.each([
	['20.19.0', true],
	['20.19.1', true],
	['22.0.0', true],
	['20.18.9', false],
	['18.20.8', false],
	['9.0.0', false]
])('Node %s is new enough: %s', (version, enough) => {
	const advice = nodeAdvice(version, '>=20.19.0');
	if (enough) expect(advice).toBeNull();
	else expect(advice).toMatch(/^Bucktail needs Node 20\.19\.0 .*: install .*\.$/);
});

test.each(['start', 'test', 'build'])('%s looks at the Node before it imports', (name) => {
	const text = readFileSync(`src/scripts/${name}.js`, 'utf8');
	expect(/^import .*/m.exec(text)?.[0]).toBe("import './node-version.js';");
});

test.each([
	['EACCES', 'belongs to somebody else'],
	['EROFS', 'can only be read'],
	['ENOSPC', 'is full']
])('%s is one sentence that says what to do', (code, why) => {
	const says = adviceOn(Object.assign(new Error(code), { code }));
	expect(says).toContain(why);
	expect(says).toMatch(/^[A-Z][^.]+: copy [^.]+\.$/);
});

test('advice is told as it is, and what nobody knows is not made up', () => {
	expect(adviceOn(new Advice('Set PORT.'))).toBe('Set PORT.');
	expect(adviceOn(new Error('planted'))).toBeNull();
	expect(adviceOn('planted')).toBeNull();
});
