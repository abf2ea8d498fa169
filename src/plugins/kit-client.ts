import { parseAst } from 'vite';
import {
	callsIn,
	type Edit,
	functionsIn,
	type Node,
	replaced,
	statementsOf,
	textOf
} from './syntax.ts';

/*
 * What SvelteKit's client can do that no page of ours asks of it. Its build keeps all of it, since
 * it is asked by what stands in the pages, not by what is imported.
 */

/**
 * Functions whose work there is none of, and what they come to without it: no page loads data, so
 * nothing of it is out of date; none keeps a snapshot of itself. Pages are fetched ahead by the service
 * worker, all at once, and not one by one under the pointer.
 */
const idle: Readonly<Record<string, string>> = {
	capture_snapshot: '',
	restore_snapshot: '',
	setup_preload: '',
	has_changed: 'return false;',
	diff_search_params: 'return null;',
	create_data_node: 'return null;',
	deserialize_uses: 'return null;',
	preload_error: ''
};

/**
 * SvelteKit's client without what no page needs.
 *
 * @throws Error where one of the parts is not there: SvelteKit was changed, and this must be looked through
 */
export function lightClient(code: string): string {
	const { body } = parseAst(code) as unknown as { body: Node[] };
	const blocks = functionsIn(body);
	const edits = Object.entries(idle).map(([name, text]): Edit => ({
		at: there(blocks.get(name), name),
		text: `{ ${text} }`
	}));
	const forms = statementsOf(there(blocks.get('_start_router'), '_start_router')).find((one) =>
		callsIn(one).some(({ args }) => textOf(args[0]) === 'submit')
	);
	// Forms that go to an address of their own: all of ours are answered on the page.
	return replaced(code, [...edits, { at: there(forms, 'submit'), text: '' }]);
}

function there(node: Node | undefined, name: string): Node {
	if (!node) throw new Error(`SvelteKit's client has no ${name}: look through kit-client.ts`);
	return node;
}
