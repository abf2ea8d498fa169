import { relative, sep } from 'node:path';
import { importSources } from './import-sources.js';
import { importFault } from './layers.js';

/**
 * The ESLint rule that holds imports to the layer table. An import whose target is computed could
 * hide anything, so it is refused.
 *
 * @type {import('eslint').Rule.RuleModule}
 */
export const layerRule = {
	meta: {
		type: 'problem',
		docs: { description: 'imports point down the layer table' },
		messages: {
			fault: '{{fault}}.',
			computed: 'Write the import as plain text: the layer rule cannot read a computed one.'
		},
		schema: []
	},
	create(context) {
		const file = relative(context.cwd, context.filename).split(sep).join('/');

		/** @param {any} source the node that names the module */
		function check(source) {
			if (typeof source?.value !== 'string') {
				context.report({ node: source, messageId: 'computed' });
				return;
			}
			const fault = importFault(file, source.value);
			if (fault) context.report({ node: source, messageId: 'fault', data: { fault } });
		}

		const visitors = Object.entries(importSources).map(([type, sourcesOf]) => [
			type,
			/** @param {any} node */ (node) => sourcesOf(node).forEach(check)
		]);
		return Object.fromEntries(visitors);
	}
};
