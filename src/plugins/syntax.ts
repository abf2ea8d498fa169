/** A node of a syntax tree, as far as it is looked at. */
export interface Node {
	readonly type: string;
	readonly start: number;
	readonly end: number;
	readonly [field: string]: unknown;
}

/** A call of a function by its plain name. */
export interface Call {
	readonly name: string;
	readonly args: readonly Node[];
}

/** Text that takes the place of a node. */
export interface Edit {
	readonly at: Node;
	readonly text: string;
}

/** The calls in a node and in what is inside of it, outer ones first. */
export function callsIn(node: Node): Call[] {
	return nodesOf(node).flatMap((one) =>
		one.type === 'CallExpression' && isNode(one.callee) ? [callOf(one, one.callee)] : []
	);
}

/** The properties written out in any object in a node. */
export function propertiesIn(node: Node): [string, Node][] {
	return nodesOf(node).flatMap((one) => (one.type === 'ObjectExpression' ? propertiesOf(one) : []));
}

/** A node and all that is inside of it, outer ones first. */
function nodesOf(node: Node): Node[] {
	const inner = Object.values(node).flatMap((field) => (Array.isArray(field) ? field : [field]));
	return [node, ...inner.filter(isNode).flatMap(nodesOf)];
}

function callOf(node: Node, callee: Node): Call {
	return { name: nameOf(callee) ?? '', args: nodesIn(node.arguments) };
}

/** The properties written out in an object; none of anything else. */
export function propertiesOf(node: Node | undefined): [string, Node][] {
	return nodesIn(node?.properties).flatMap((one): [string, Node][] => {
		const key = isNode(one.key) ? (nameOf(one.key) ?? textOf(one.key)) : null;
		return key !== null && isNode(one.value) ? [[key, one.value]] : [];
	});
}

export function propertyOf(node: Node | undefined, key: string): Node | undefined {
	return propertiesOf(node).find(([name]) => name === key)?.[1];
}

/** The words of a plain string; null of anything else. */
export function textOf(node: Node | undefined): string | null {
	return typeof node?.value === 'string' ? node.value : null;
}

/** The code with its edits made, and without the imports and constants that are not used any more. */
export function edited(code: string, body: readonly Node[], edits: readonly Edit[]): string {
	const imports = body.filter(({ type }) => type === 'ImportDeclaration');
	const gone = new Set<Node>();
	for (let before = -1; before < gone.size;) {
		before = gone.size;
		const rest = without(code, [...gone, ...imports], edits).replace(/\/\*[^]*?\*\//g, '');
		for (const one of body) {
			// A constant is named once where it is declared.
			const least = imports.includes(one) ? 1 : 2;
			const own = declaredIn(one);
			const used = own.some((name) => rest.split(new RegExp(`\\b${name}\\b`)).length > least);
			if (own.length > 0 && !used) gone.add(one);
		}
	}
	return without(code, [...gone], edits);
}

function without(code: string, gone: readonly Node[], edits: readonly Edit[]): string {
	return replaced(code, [...gone.map((at) => ({ at, text: '' })), ...edits]);
}

/** Names that a statement declares for its own file: imports and constants. */
function declaredIn(statement: Node): string[] {
	const declared =
		statement.type === 'ImportDeclaration'
			? nodesIn(statement.specifiers).map(({ local }) => local)
			: statement.type === 'VariableDeclaration'
				? nodesIn(statement.declarations).map(({ id }) => id)
				: [];
	return declared.filter(isNode).flatMap((one) => nameOf(one) ?? []);
}

function replaced(code: string, edits: readonly Edit[]): string {
	const inOrder = [...edits].sort((one, other) => one.at.start - other.at.start);
	let out = '';
	let done = 0;
	for (const { at, text } of inOrder) {
		// What stands inside of a replaced part is gone with it.
		if (at.start < done) continue;
		out += code.slice(done, at.start) + text;
		done = at.end;
	}
	return out + code.slice(done);
}

function nameOf(node: Node): string | null {
	return node.type === 'Identifier' && typeof node.name === 'string' ? node.name : null;
}

function nodesIn(field: unknown): Node[] {
	return Array.isArray(field) ? field.filter(isNode) : [];
}

function isNode(value: unknown): value is Node {
	return typeof value === 'object' && value !== null && 'type' in value && 'start' in value;
}
