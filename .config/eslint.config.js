import js from '@eslint/js';
import prettier from 'eslint-config-prettier';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import tseslint from 'typescript-eslint';
import svelteConfig from '../svelte.config.js';
import { layerRule } from './layer-rule.js';

/** What the engine must be handed instead of reaching for it. */
const forbiddenInEngine = [
	'Date',
	'performance',
	'crypto',
	'document',
	'window',
	'self',
	'globalThis',
	'navigator',
	'localStorage',
	'sessionStorage',
	'indexedDB',
	'fetch',
	'setTimeout',
	'setInterval',
	'process'
].map((name) => ({ name, message: 'The engine is pure: take this as an argument.' }));

/** What a browser has on secure pages only, so not where `npm start -- --host` serves them. */
const secureOnly = {
	object: 'crypto',
	property: 'randomUUID',
	message: 'Not there over plain http: use newId().'
};

/** An import that nobody waits for in `late()` fails without a word that helps. */
const bareImport = {
	selector:
		"ImportExpression:not(CallExpression[callee.name='late'] > ArrowFunctionExpression > *)",
	message: 'Write late(() => import(…)), so that a failure says what to do.'
};

export default tseslint.config(
	{ ignores: ['build/', '.svelte-kit/', '.reports/'] },
	{ linterOptions: { reportUnusedDisableDirectives: 'error' } },
	js.configs.recommended,
	tseslint.configs.strict,
	svelte.configs.recommended,
	prettier,
	svelte.configs.prettier,
	{
		languageOptions: { globals: { ...globals.browser, ...globals.node } },
		rules: {
			// TypeScript and svelte-check know which names exist.
			'no-undef': 'off',
			'no-eval': 'error',
			'no-implied-eval': 'error',
			'no-new-func': 'error',
			eqeqeq: 'error'
		}
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: { parserOptions: { parser: tseslint.parser, svelteConfig } },
		rules: {
			'svelte/no-at-html-tags': 'error',
			// Pages resolve addresses and hand them to components; the rule cannot follow that.
			'svelte/no-navigation-without-resolve': 'off'
		}
	},
	{ files: ['src/lib/ui/Markup.svelte'], rules: { 'svelte/no-at-html-tags': 'off' } },
	{
		files: ['src/**'],
		plugins: { bucktail: { rules: { layers: layerRule } } },
		rules: {
			'bucktail/layers': 'error',
			'no-restricted-properties': ['error', secureOnly]
		}
	},
	{
		files: ['src/lib/ui/**', 'src/lib/app/**', 'src/routes/**'],
		rules: { 'no-restricted-syntax': ['error', bareImport] }
	},
	// A test fixture that needs no other one is written with an empty pattern.
	{
		files: ['tests/**'],
		rules: { 'no-empty-pattern': ['error', { allowObjectPatternsAsParameters: true }] }
	},
	// The other test files share their modules, and would be handed what was put in place.
	{
		files: ['tests/**'],
		ignores: ['**/*.alone.test.ts'],
		rules: {
			'no-restricted-properties': [
				'error',
				...['mock', 'doMock', 'resetModules'].map((property) => ({
					...{ object: 'vi', property },
					message: 'Name the file *.alone.test.ts, so that it shares no modules with others.'
				}))
			]
		}
	},
	{ files: ['src/lib/**'], rules: { 'no-console': 'error' } },
	{
		files: ['src/lib/engine/**'],
		rules: {
			'no-restricted-globals': ['error', ...forbiddenInEngine],
			'no-restricted-properties': [
				'error',
				{ object: 'Math', property: 'random', message: 'Draw from the seeded random argument.' }
			]
		}
	}
);
