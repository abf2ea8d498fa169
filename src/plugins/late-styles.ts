import { basename } from 'node:path';
import type { Plugin, Rolldown } from 'vite';

type Bundle = Rolldown.OutputBundle;

/** SvelteKit's script, which every page starts with. */
const pageStart = /\/entry\/app\./;

/** What Vite puts at the top of a file that imports others later: the paths of their style sheets. */
const paths = /const __vite__mapDeps=.*?m\.f=(\[[^\]]*\]).*?\n/;

/** What Vite hands its helper with an import: which of those paths, and what they are relative to. */
const handed = /,(?:__vite__mapDeps\((\[[\d,]*\])\)|\[\]),import\.meta\.url(?=\))/g;

/**
 * Writes shorter which style sheets come along with what a file imports later: each import names its
 * own, by its name alone, and none that stand in every page. The lists of paths weighed 0.6 kB in
 * the first load.
 */
export function lateStyles(): Plugin {
	return {
		name: 'late-styles',
		generateBundle: {
			// Vite writes its lists before.
			order: 'post',
			handler(_, bundle) {
				if (this.environment.name !== 'client') return;
				const standing = stylesOnEveryPage(bundle);
				for (const file of Object.values(bundle)) {
					if (file.type === 'chunk') file.code = named(file.code, standing);
				}
			}
		}
	};
}

function named(code: string, standing: ReadonlySet<string>): string {
	const listed: readonly string[] = JSON.parse(paths.exec(code)?.[1] ?? '[]');
	return code.replace(paths, '').replace(handed, (_, places = '[]') => {
		const names = (JSON.parse(places) as number[])
			.map((place) => basename(listed[place] ?? '', '.css'))
			.filter((name) => !standing.has(name));
		return names.length > 0 ? `,"${names.join(' ')}"` : '';
	});
}

/** Names of the style sheets of what every page loads first. */
function stylesOnEveryPage(bundle: Bundle): ReadonlySet<string> {
	const styles = new Set<string>();
	const seen = new Set<string>();
	const reach = (name: string) => {
		const file = bundle[name];
		if (file?.type !== 'chunk' || seen.has(name)) return;
		seen.add(name);
		file.viteMetadata?.importedCss.forEach((style) => styles.add(basename(style, '.css')));
		file.imports.forEach(reach);
	};
	Object.keys(bundle)
		.filter((name) => pageStart.test(name))
		.forEach(reach);
	return styles;
}
