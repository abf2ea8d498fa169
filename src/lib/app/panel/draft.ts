import { lists, planPart } from '$lib/engine/panel/fields.ts';
import { isObject } from '$lib/engine/panel/read-field.ts';

/** What stands in the fields of one part, as typed. */
export type Texts = Record<string, string>;

/** A panel as it stands in the fields: the panel file, all of it text. */
export interface Draft {
	panel: Texts;
	members: Texts[];
	doublers: Texts[];
	cutouts: Texts[];
	bends: Texts[];
	stock: Texts[];
	rivet: Texts;
	/** Pitch, margin and kerf. */
	rows: Texts;
}

export type ListKey = keyof typeof lists;

const frame = { runs: 'across', flange: '3/4', thickness: '0.040', rows: '1' };

/** What a page begins with: a side panel over two frames and a stringer. */
export function firstDraft(): Draft {
	return {
		panel: {
			name: 'Side panel',
			length: '22',
			width: '14',
			thickness: '0.032',
			alloy: '2024-T3',
			cornerRadius: '1/4',
			trim: '1/8'
		},
		members: [
			{ ...frame, name: 'Frame A', at: '6' },
			{ ...frame, name: 'Frame B', at: '16' },
			{ ...frame, name: 'Stringer', runs: 'along', at: '7', flange: '5/8', thickness: '0.032' }
		],
		doublers: [],
		cutouts: [],
		bends: [],
		stock: [],
		rivet: { head: 'universal', alloy: '2117' },
		rows: { greatestPitch: '1' }
	};
}

/** A new part of a list, ready to be filled in. */
export function newPart(key: ListKey, count: number): Texts {
	const name = `${lists[key].one.replace(/^./, (first) => first.toUpperCase())} ${count + 1}`;
	switch (key) {
		case 'members':
			return { ...frame, name, at: '' };
		case 'doublers':
		case 'cutouts':
			return { name };
		case 'bends':
			return { edge: 'left', angle: '90' };
		default:
			return {};
	}
}

/** The panel file of a draft: empty fields are left out. */
export function fileOf(draft: Draft): Record<string, unknown> {
	const { panel, rivet, stock, rows } = draft;
	const all = (parts: readonly Texts[]) => parts.map(filled);
	return {
		version: 1,
		panel: filled(panel),
		members: all(draft.members),
		doublers: all(draft.doublers),
		cutouts: all(draft.cutouts),
		bends: all(draft.bends),
		...(stock.length > 0 && { stock: all(stock) }),
		rivet: filled(rivet),
		...filled(rows)
	};
}

/** The draft with another text in the field at a path of the panel file: `members.0.at`. */
export function withText(draft: Draft, path: string, text: string): Draft {
	const [part = '', place, key] = path.split('.');
	if (place === undefined) return { ...draft, rows: { ...draft.rows, [part]: text } };
	if (part === 'panel' || part === 'rivet') {
		return { ...draft, [part]: { ...draft[part], [place]: text } };
	}
	if (!Object.hasOwn(lists, part) || key === undefined) return draft;
	const list = part as ListKey;
	const changed = draft[list].map((one, i) =>
		String(i) === place ? { ...one, [key]: text } : one
	);
	return { ...draft, [list]: changed };
}

function filled(texts: Texts): Texts {
	return Object.fromEntries(Object.entries(texts).filter(([, text]) => text.trim() !== ''));
}

/** The draft of a panel file, whatever stands in it; null where it is none. */
export function draftOf(text: string): Draft | null {
	try {
		const raw: unknown = JSON.parse(text.replace(/^\ufeff/, ''));
		if (!isObject(raw) || !isObject(raw.panel)) return null;
		const blank = firstDraft();
		const parts = (key: ListKey) => {
			const list = raw[key];
			return Array.isArray(list) ? list.map(textsOf) : [];
		};
		return {
			panel: textsOf(raw.panel),
			members: parts('members'),
			doublers: parts('doublers'),
			cutouts: parts('cutouts'),
			bends: parts('bends'),
			stock: parts('stock'),
			rivet: { ...blank.rivet, ...textsOf(raw.rivet) },
			rows: textsOf(planPart(raw))
		};
	} catch {
		return null;
	}
}

function textsOf(raw: unknown): Texts {
	if (!isObject(raw)) return {};
	return Object.fromEntries(Object.entries(raw).map(([key, value]) => [key, textOf(value)]));
}

function textOf(value: unknown): string {
	if (Array.isArray(value)) return value.map(textOf).join(', ');
	return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}
