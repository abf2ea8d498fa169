import { isObject } from './read-field.ts';

/** The name of a panel in the text of its file; "Panel" where it has none. */
export function panelName(file: string): string {
	try {
		const raw: unknown = JSON.parse(file);
		const name = isObject(raw) && isObject(raw.panel) ? raw.panel.name : '';
		return typeof name === 'string' && name !== '' ? name : 'Panel';
	} catch {
		return 'Panel';
	}
}
