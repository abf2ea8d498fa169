import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { wholeSyllabus } from '$lib/engine/schedule/whole-syllabus.ts';
import type { Syllabus } from '$lib/engine/schedule/skill.ts';
import { workAhead } from '../../../src/plugins/work-ahead.ts';

const file = resolve(import.meta.dirname, '../../../src/lib/engine/schedule/whole-syllabus.ts');

/** What the build makes of the file, for the pages or for the server that draws them first. */
async function built(command: 'build' | 'serve', environment: 'client' | 'ssr') {
	const plugin = workAhead() as unknown as {
		configResolved(config: { command: string }): void;
		transform(
			this: { environment: { name: string } },
			code: string,
			id: string
		): Promise<{ code: string } | null>;
	};
	plugin.configResolved({ command });
	return plugin.transform.call({ environment: { name: environment } }, '', file);
}

test('the syllabus that ships is the one the families come to', async () => {
	const { code = '' } = (await built('build', 'client')) ?? {};
	const shipped = (await import(
		/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(code)}`
	)) as { wholeSyllabus(): Promise<Syllabus> };
	expect(await shipped.wholeSyllabus()).toEqual(await wholeSyllabus());
	expect(code).not.toContain('import');
});

test('it is worked out for the pages alone', async () => {
	expect(await built('build', 'ssr')).toBeNull();
	expect(await built('serve', 'client')).toBeNull();
});
