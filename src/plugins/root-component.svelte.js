/*
 * Stands in the pages in place of what SvelteKit starts its root component with, which is all that a
 * component of Svelte 4 could do. SvelteKit makes one and sets its props as it goes to another page.
 */
import { flushSync, hydrate, mount } from 'svelte';

/** @param {import('svelte').Component<Record<string, unknown>>} component */
export const asClassComponent = (component) =>
	class {
		/** @type {Record<string | symbol, unknown>} */
		#props = $state.raw({});

		/**
		 * @param {{
		 *   target: Element,
		 *   props: Record<string, unknown>,
		 *   hydrate: boolean,
		 *   transformError?: (error: unknown) => unknown
		 * }} options
		 */
		constructor({ target, props, hydrate: isDrawn, transformError }) {
			this.#props = props;
			(isDrawn ? hydrate : mount)(component, {
				target,
				transformError,
				// Props may come that were not there before, as where a page lies a layout deeper.
				props: new Proxy(
					{},
					{ get: (_, key) => this.#props[key], has: (_, key) => key in this.#props }
				)
			});
			flushSync();
		}

		/** @param {Record<string, unknown>} next */
		$set(next) {
			this.#props = { ...this.#props, ...next };
		}
	};
