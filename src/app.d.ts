declare global {
	namespace App {}
}

declare module 'svelte/elements' {
	interface HTMLLinkAttributes {
		/** HTML, “blocking attributes”: not among Svelte's types yet. */
		blocking?: 'render';
	}
}

export {};
