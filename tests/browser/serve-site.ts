import { existsSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { isBuilt, site } from '../../src/scripts/build.js';
import { serve } from '../../src/scripts/serve.js';

declare module 'vitest' {
	interface ProvidedContext {
		/** The address of the built site. */
		site: string;
	}
}

/** Serves the built site while the tests of this folder run. */
export default async function serveSite(project: TestProject) {
	if (!existsSync(site)) throw new Error('the site is not built: run npm run build first');
	if (!isBuilt()) console.warn('The built site is older than its sources: run npm run build.');
	const server = await serve({ folder: site, port: 0, host: '127.0.0.1' });
	project.provide('site', `http://localhost:${server.port}`);
	return server.close;
}
