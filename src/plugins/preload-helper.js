/*
 * Stands in the pages in place of the helper that Vite puts around every import: that one can do
 * more, and weighs three times as much in the first load.
 */

/** Style sheets that are loaded or on their way, by address. @type {Map<string, Promise<unknown>>} */
const sheets = new Map();

/** @param {string} href */
function loadSheet(href) {
	const known = sheets.get(href);
	// Its name holds a hash of what is in it; to look at every link's address takes long.
	const name = href.slice(href.lastIndexOf('/'));
	if (known || document.querySelector(`link[rel=stylesheet][href$="${name}"]`)) return known;
	const loading = new Promise((resolve, reject) => {
		const link = document.createElement('link');
		link.rel = 'stylesheet';
		link.href = href;
		link.onload = resolve;
		link.onerror = () => {
			// It is asked for again next time.
			sheets.delete(href);
			link.remove();
			reject(Error(`${href} could not be loaded`));
		};
		document.head.append(link);
	});
	sheets.set(href, loading);
	return loading;
}

/**
 * Imports a file once the style sheets of its components are there.
 *
 * @template T
 * @param {() => Promise<T>} load
 * @param {readonly string[]} [styles] addresses
 * @param {string} [from] what the addresses are relative to
 */
export async function __vitePreload(load, styles = [], from) {
	try {
		await Promise.all(styles.map((style) => loadSheet(new URL(style, from).href)));
		return await load();
	} catch (error) {
		// As Vite does: whoever listens says what to do.
		const event = Object.assign(new Event('vite:preloadError'), { payload: error });
		window.dispatchEvent(event);
		throw error;
	}
}
