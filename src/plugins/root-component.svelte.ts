/*
 * Stands in the pages in place of what SvelteKit starts its root component with, which is all that a
 * component of Svelte 4 could do. SvelteKit makes one and sets its props as it goes to another page.
 */
import { type Component, flushSync, hydrate, mount } from 'svelte';

type Props = Readonly<Record<string | symbol, unknown>>;

interface Start {
	readonly target: Element;
	readonly props: Props;
	/** Whether the page is drawn already. */
	readonly hydrate: boolean;
	readonly transformError?: (error: unknown) => unknown;
}

export const asClassComponent = (component: Component<Props>) =>
	class {
		#props = $state.raw<Props>({});

		constructor({ target, props, hydrate: isDrawn, transformError }: Start) {
			this.#props = props;
			const shown = new Proxy<Props>(
				{},
				// Props may come that were not there before, as where a page lies a layout deeper.
				{ get: (_, key) => this.#props[key], has: (_, key) => key in this.#props }
			);
			const options = { target, props: shown, ...(transformError && { transformError }) };
			(isDrawn ? hydrate : mount)(component, options);
			flushSync();
		}

		$set(next: Props) {
			this.#props = { ...this.#props, ...next };
		}
	};
