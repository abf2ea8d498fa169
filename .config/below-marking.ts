import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { layers } from './layers.js';

const top = resolve(import.meta.dirname, '..');
const engine = join(top, 'src/lib/engine');

/** Where what marking stands on is built to. */
export const builtFolder = join(top, 'build/below-marking');

const folders = (layers['src/lib/engine/marking']?.imports ?? []).map((one) => join(top, one));

/** Every file of the layers under marking. */
export const filesBelow: readonly string[] = folders.flatMap((folder) =>
	readdirSync(folder, { recursive: true, encoding: 'utf8' })
		.filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
		.map((file) => join(folder, file))
);

/** Gives the built file in place of one of the layers under marking; Node loads it as it is. */
export function takeBuilt(): Plugin {
	return {
		name: 'take-built',
		enforce: 'pre',
		async resolveId(source, importer, options) {
			if (!source.startsWith('.')) return null;
			const found = await this.resolve(source, importer, { ...options, skipSelf: true });
			const [path = ''] = found?.id.split('?') ?? [];
			if (!folders.some((folder) => path.startsWith(`${folder}/`))) return null;
			const built = path.slice(engine.length).replace(/ts$/, 'js');
			return { id: join(builtFolder, built), external: true };
		}
	};
}
