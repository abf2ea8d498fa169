/*
 * Stands in the pages in place of the helper that Vite puts around every import: that one can do
 * more, and weighs three times as much in the first load.
 */

/** Files of code stand in folders beside that of style sheets. */
const here = import.meta.url;

/** Style sheets that are loaded or on their way, by name. @type {Map<string, Promise<unknown>>} */
const sheets = new Map();

/** @param {string} name */
function loadSheet(name) {
	const known = sheets.get(name);
	const file = `/assets/${name}.css`;
	// Its name holds a hash of what is in it; to look at every link's address takes long.
	if (known || document.querySelector(`link[rel=stylesheet][href$="${file}"]`)) return known;
	const loading = new Promise((resolve, reject) => {
		const link = document.createElement('link');
		link.rel = 'stylesheet';
		link.href = new URL(`..${file}`, here).href;
		link.onload = resolve;
		link.onerror = () => {
			// It is asked for again next time.
			sheets.delete(name);
			link.remove();
			reject(Error(`${file} could not be loaded`));
		};
		document.head.append(link);
	});
	sheets.set(name, loading);
	return loading;
}

/**
 * Imports a file once the style sheets of its components are there.
 *
 * @template T
 * @param {() => Promise<T>} load
 * @param {string} [styles] names of the sheets, without their folder (late-styles.ts)
 */
export async function __vitePreload(load, styles) {
	try {
		const names = styles?.split(' ') ?? [];
		await Promise.all(names.map(loadSheet));
		return await load();
	} catch (error) {
		// As Vite does: whoever listens says what to do.
		const event = Object.assign(new Event('vite:preloadError'), { payload: error });
		window.dispatchEvent(event);
		throw error;
	}
}
