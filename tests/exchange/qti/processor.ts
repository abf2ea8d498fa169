import { XmlDocument, XmlElement } from 'libxml2-wasm';

/*
 * Marks an item by its own response processing, written from the QTI standard and from nothing of
 * Bucktail: conditions in turn, the first that holds; numbers as floats.
 */

type Value = string | number | null;

export interface Outcomes {
	readonly score: number;
	readonly feedback: Readonly<Record<string, string>>;
}

/** Marks responses by the identifier of their declaration; one left out is null. */
export type Processor = (responses: Readonly<Record<string, string>>) => Outcomes;

interface Node {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly text: string;
	readonly children: readonly Node[];
}

export function processorOf(xml: string): Processor {
	const item = parsed(xml);
	return (responses) => {
		const variables = new Map<string, Value>();
		for (const { name, attributes, children } of item.children) {
			const id = attributes.identifier ?? '';
			const type = attributes['base-type'] ?? '';
			if (name === 'qti-response-declaration') variables.set(id, cast(responses[id], type));
			if (name === 'qti-outcome-declaration') {
				variables.set(id, cast(children[0]?.children[0]?.text, type));
			}
		}
		const processing = item.children.find(({ name }) => name === 'qti-response-processing');
		for (const condition of processing?.children ?? []) carryOut(condition, variables);
		const outcomes = item.children.filter(({ name }) => name === 'qti-outcome-declaration');
		const feedback = outcomes.flatMap(({ attributes: { identifier = '' } }) => {
			const value = variables.get(identifier);
			return typeof value === 'string' ? [[identifier, value] as const] : [];
		});
		return { score: Number(variables.get('SCORE')), feedback: Object.fromEntries(feedback) };
	};
}

function cast(text: string | undefined, type: string): Value {
	if (text === undefined || text === '') return null;
	return type === 'float' ? Number(text) : text;
}

function carryOut(condition: Node, variables: Map<string, Value>): void {
	for (const branch of condition.children) {
		const isElse = branch.name === 'qti-response-else';
		const test = isElse ? undefined : branch.children[0];
		if (test && !holds(test, variables)) continue;
		for (const { name, attributes, children } of branch.children.slice(isElse ? 0 : 1)) {
			if (name !== 'qti-set-outcome-value') throw new Error(`unknown: ${name}`);
			variables.set(attributes.identifier ?? '', valueOf(children[0], variables));
		}
		return;
	}
}

function holds(test: Node, variables: ReadonlyMap<string, Value>): boolean {
	const { name, attributes, children } = test;
	if (name === 'qti-and') return children.every((one) => holds(one, variables));
	if (name === 'qti-or') return children.some((one) => holds(one, variables));
	const [one = null, other = null] = children.map((child) => valueOf(child, variables));
	// An expression of which a part is null is null, which counts as false.
	if (one === null || other === null) return false;
	switch (name) {
		case 'qti-match':
			return one === other;
		case 'qti-equal': {
			if (attributes['tolerance-mode'] !== 'absolute') throw new Error('unknown tolerance mode');
			const room = Number(attributes.tolerance);
			return Number(one) >= Number(other) - room && Number(one) <= Number(other) + room;
		}
		case 'qti-string-match':
			return attributes['case-sensitive'] === 'false'
				? String(one).toLowerCase() === String(other).toLowerCase()
				: one === other;
		default:
			throw new Error(`unknown: ${name}`);
	}
}

function valueOf(node: Node | undefined, variables: ReadonlyMap<string, Value>): Value {
	if (!node) throw new Error('nothing to work out');
	const { name, attributes, text, children } = node;
	switch (name) {
		case 'qti-variable':
			return variables.get(attributes.identifier ?? '') ?? null;
		case 'qti-base-value':
			return cast(text, attributes['base-type'] ?? '');
		case 'qti-sum':
			return children.reduce((sum, one) => sum + Number(valueOf(one, variables)), 0);
		default:
			throw new Error(`unknown: ${name}`);
	}
}

function parsed(xml: string): Node {
	const document = XmlDocument.fromString(xml);
	try {
		return nodeOf(document.root);
	} finally {
		document.dispose();
	}
}

function nodeOf(element: XmlElement): Node {
	const children: Node[] = [];
	for (let next = element.firstChild; next; next = next.next) {
		if (next instanceof XmlElement) children.push(nodeOf(next));
	}
	const attributes = Object.fromEntries(element.attrs.map((one) => [one.name, one.value]));
	return { name: element.name, attributes, text: element.content, children };
}
