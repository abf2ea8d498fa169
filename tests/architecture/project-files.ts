import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';

export const projectTop = resolve(import.meta.dirname, '../..');

/** The project's files as git sees them: tracked, or new and not ignored. */
export function trackedFiles(): string[] {
	const list = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
	const paths = execFileSync('git', list, { cwd: projectTop, encoding: 'utf8' }).split('\0');
	return paths.filter((path) => path && existsSync(join(projectTop, path)));
}
