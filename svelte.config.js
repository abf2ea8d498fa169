import adapter from '@sveltejs/adapter-static';

// SvelteKit's route announcer carries one style attribute; this is its hash.
const announcerStyle = 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo=';

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true, discloseVersion: false },
	kit: {
		// Styles stand in the page: twenty files of them kept its first paint waiting, also those that
		// are on the device.
		inlineStyleThreshold: 100_000,
		adapter: adapter({ pages: 'build/site', assets: 'build/site', strict: true }),
		typescript: {
			config: (config) => ({ ...config, include: [...config.include, '../vite.config.ts'] })
		},
		csp: {
			mode: 'hash',
			directives: {
				'default-src': ['none'],
				'script-src': ['self'],
				'style-src': ['self'],
				'style-src-attr': ['unsafe-hashes', announcerStyle],
				'img-src': ['self', 'data:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'worker-src': ['self'],
				'manifest-src': ['self'],
				'base-uri': ['none'],
				'form-action': ['none']
			}
		}
	}
};
