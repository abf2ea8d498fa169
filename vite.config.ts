import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { testProjects } from './.config/test-projects.ts';
import { compileMethods } from './src/plugins/compile-methods.ts';

export default defineConfig({
	plugins: [compileMethods(), sveltekit()],
	build: { assetsInlineLimit: 0 },
	test: { projects: testProjects }
});
