/**
 * Every way to name another module, by syntax-tree node: each reads the nodes that hold the names.
 *
 * @type {Readonly<Record<string, (node: any) => any[]>>}
 */
export const importSources = {
	ImportDeclaration: (node) => [node.source],
	ExportNamedDeclaration: (node) => (node.source ? [node.source] : []),
	ExportAllDeclaration: (node) => [node.source],
	ImportExpression: (node) => [node.source],
	TSExternalModuleReference: (node) => [node.expression],
	// typescript-eslint calls it source, Svelte's parser argument.
	TSImportType: (node) => [node.source ?? node.argument],
	CallExpression: (node) =>
		isGlob(node) ? patternsOf(node.arguments[0]) : isRequire(node) ? [node.arguments[0]] : [],
	NewExpression: (node) => (isModuleUrl(node) ? [node.arguments[0]] : [])
};

/** `import.meta.glob(pattern)` @param {any} node */
function isGlob({ callee }) {
	return callee.object?.type === 'MetaProperty' && callee.property.name === 'glob';
}

/** The patterns of a glob that add files; those that leave files out name no module. @param {any} pattern */
function patternsOf(pattern) {
	const all = pattern?.type === 'ArrayExpression' ? pattern.elements : [pattern];
	return all.filter((/** @type {any} */ one) => !String(one?.value).startsWith('!'));
}

/** `require(name)` @param {any} node */
function isRequire({ callee }) {
	return callee.type === 'Identifier' && callee.name === 'require';
}

/** `new URL(path, import.meta.url)`, as for a worker @param {any} node */
function isModuleUrl(node) {
	const base = node.arguments[1];
	return node.callee.name === 'URL' && base?.object?.type === 'MetaProperty';
}
