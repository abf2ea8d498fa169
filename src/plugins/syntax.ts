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

/** The blocks of the functions that a file declares, by name. */
export function functionsIn(body: readonly Node[]): ReadonlyMap<string, Node> {
	const declared = body
		.flatMap((one) => (isNode(one.declaration) ? [one.declaration] : [one]))
		.filter(({ type }) => type === 'FunctionDeclaration');
	return new Map(
		declared.flatMap(({ id, body: block }): [string, Node][] => {
			const name = isNode(id) ? nameOf(id) : null;
			return name !== null && isNode(block) ? [[name, block]] : [];
		})
	);
}

/** The statements of a block; none of anything else. */
export function statementsOf(block: Node): Node[] {
	return blockOf(block) ?? [];
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

/** Every `new Error(…)` that is thrown or returned, and every `if` that does nothing but throw one. */
export function faultsIn(body: readonly Node[]): { told: Node[]; asked: Node[] } {
	const nodes = body.flatMap(nodesOf);
	const asked = nodes.filter(({ type, consequent, alternate }) => {
		const [only, ...more] = isNode(consequent) ? (blockOf(consequent) ?? [consequent]) : [];
		return type === 'IfStatement' && !alternate && more.length === 0 && faultOf(only);
	});
	const told = nodes.flatMap((node) => faultOf(node) ?? faultOf(node, 'ReturnStatement') ?? []);
	return { told, asked };
}

/** What a statement throws, or returns, where that is a plain error. */
function faultOf(statement: Node | undefined, type = 'ThrowStatement'): Node | null {
	const told = statement?.type === type ? statement.argument : null;
	if (!isNode(told) || told.type !== 'NewExpression' || !isNode(told.callee)) return null;
	return nameOf(told.callee) === 'Error' ? told : null;
}

function blockOf({ type, body }: Node): Node[] | null {
	return type === 'BlockStatement' ? nodesIn(body) : null;
}

/** A node and all that is inside of it, outer ones first. */
function nodesOf(node: Node): Node[] {
	return [node, ...fieldsOf(node).flatMap(nodesOf)];
}

function fieldsOf(node: Node): Node[] {
	return Object.values(node)
		.flatMap((field) => (Array.isArray(field) ? field : [field]))
		.filter(isNode);
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

/** The code with its edits made, without the imports, constants and functions not used any more. */
export function edited(code: string, body: readonly Node[], edits: readonly Edit[]): string {
	const named = new Map(body.map((one) => [one, namesIn(one, edits)]));
	const gone = new Set<Node>();
	for (let before = -1; before < gone.size;) {
		before = gone.size;
		for (const one of body) {
			const others = body.filter((other) => other !== one && !gone.has(other));
			const own = declaredIn(one);
			const used = own.some((name) => others.some((other) => named.get(other)?.has(name)));
			if (own.length > 0 && !used) gone.add(one);
		}
	}
	return without(code, [...gone], edits);
}

/** The names in a statement once its edits are made; none of an import, which only declares them. */
function namesIn(statement: Node, edits: readonly Edit[]): Set<string> {
	const names = new Set<string>();
	const read = (node: Node) => {
		const edit = edits.find(({ at }) => at === node);
		if (edit) for (const [name] of edit.text.matchAll(/[\w$]+/g)) names.add(name);
		else {
			const name = nameOf(node);
			if (name !== null) names.add(name);
			fieldsOf(node).forEach(read);
		}
	};
	if (statement.type !== 'ImportDeclaration') read(statement);
	return names;
}

function without(code: string, gone: readonly Node[], edits: readonly Edit[]): string {
	return replaced(code, [...gone.map((at) => ({ at, text: '' })), ...edits]);
}

/** Names that a statement declares for its own file: imports, constants and functions. */
function declaredIn(statement: Node): string[] {
	const declared =
		statement.type === 'ImportDeclaration'
			? nodesIn(statement.specifiers).map(({ local }) => local)
			: statement.type === 'VariableDeclaration'
				? nodesIn(statement.declarations).map(({ id }) => id)
				: statement.type === 'FunctionDeclaration'
					? [statement.id]
					: [];
	return declared.filter(isNode).flatMap((one) => nameOf(one) ?? []);
}

/** The code with its edits made. */
export function replaced(code: string, edits: readonly Edit[]): string {
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
