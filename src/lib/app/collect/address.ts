import { collecting } from './collecting.svelte.ts';
import { setShelf } from '../sets/shelf.svelte.ts';

/** Opens the set that an address names: by its hash, `?set=9F3A-C41E`, or as a link behind `#`. */
export async function openFrom(url: URL): Promise<void> {
	await setShelf.load();
	if (url.hash.length > 1) return collecting.openLink(url.hash);
	return collecting.load(url.searchParams.get('set'));
}

/** The address with the set in it that is open, so that a reload opens it again. */
export function addressOf(hash: string, url: URL): string {
	const to = new URL(url);
	to.hash = '';
	to.searchParams.set('set', hash);
	return `${to.pathname}${to.search}`;
}
