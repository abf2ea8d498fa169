import { resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';
import type { Syllabus } from '../lib/engine/schedule/skill.ts';
import { compileMethods } from './compile-methods.ts';

const file = resolve(import.meta.dirname, '../lib/engine/schedule/whole-syllabus.ts');

/**
 * Ships the syllabus as data: it is the same on every device, and working it out held a slow phone up
 * for a second and a half before its first planned task.
 */
export function workAhead(): Plugin {
	let isBuild = false;
	return {
		name: 'work-ahead',
		enforce: 'pre',
		configResolved({ command }) {
			isBuild = command === 'build';
		},
		async transform(_, id) {
			if (!isBuild || this.environment.name !== 'client' || id !== file) return null;
			return { code: asData(await worked()), map: null };
		}
	};
}

/** The syllabus, drawn from the families as they are now. */
async function worked(): Promise<Syllabus> {
	const { module } = await runnerImport<{ syllabus: Syllabus }>(
		resolve(import.meta.dirname, 'worked-ahead.ts'),
		{ configFile: false, plugins: [compileMethods()] }
	);
	return module.syllabus;
}

/** The module as it ships. As text, JSON is read sooner than the same written as code. */
function asData(syllabus: Syllabus): string {
	const text = JSON.stringify(JSON.stringify(syllabus));
	return `const syllabus = JSON.parse(${text});\nexport const wholeSyllabus = async () => syllabus;\n`;
}
