import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { top } from '../../src/scripts/project.js';

/** The paths of all files in a folder of the project, from its top, with `/`. */
export function filesIn(folder: string): string[] {
	const entries = readdirSync(join(top, folder), { withFileTypes: true });
	return entries.flatMap((entry) => {
		const path = `${folder}/${entry.name}`;
		return entry.isDirectory() ? filesIn(path) : [path];
	});
}

/** The project's files and folders at the top as git sees them: tracked, or new and not ignored. */
export function topLevel(): string[] {
	const list = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
	// In a container the checkout may belong to another user than the one who runs the tests.
	const args = ['-c', 'safe.directory=*', ...list];
	const paths = execFileSync('git', args, { cwd: top, encoding: 'utf8' }).split('\0');
	const present = paths.filter((path) => path && existsSync(join(top, path)));
	return [...new Set(present.map((path) => path.split('/')[0] ?? path))];
}
