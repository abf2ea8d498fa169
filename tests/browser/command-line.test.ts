import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { top } from '../../src/scripts/project.js';

/** Runs the built program as a person does, in the checkout. */
function bucktail(...args: string[]) {
	const options = { cwd: top, encoding: 'utf8', shell: process.platform === 'win32' } as const;
	return spawnSync('npx', ['bucktail', ...args], options);
}

test('npx runs the built program', () => {
	const given = ['layers=0.032in,0.040in', 'D=1/8in'];
	const { status, stdout } = bucktail('solve', 'rivet-length', ...given, '--json');
	expect(JSON.parse(stdout)).toMatchObject({ method: 'rivet-length' });
	expect(status).toBe(0);
});

test('npx hands on the exit code and the one line for bad input', () => {
	const { status, stdout, stderr } = bucktail('solve', 'no-such-method');
	expect(stdout).toBe('');
	expect(stderr.trim().split('\n')).toHaveLength(1);
	expect(status).toBe(2);
});
