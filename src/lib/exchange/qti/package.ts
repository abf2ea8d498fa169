import { toSvg } from '../../engine/figures/to-svg.ts';
import type { Value } from '../../engine/quantity/value.ts';
import { textAt } from '../../engine/solver/show.ts';
import type { OpenSet } from '../../engine/sets/open-set.ts';
import { readSet, type SetReading } from '../../engine/sets/set.ts';
import type { Task } from '../../engine/tasks/task.ts';
import { figureStyle } from '../print/style.ts';
import { readZip, writeZip } from '../zip.ts';
import { type Item, itemNamespace, itemOf } from './item.ts';
import { el, words, xmlDocument } from './xml.ts';

const manifestNamespace = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';

/** The set as it is, so that its own package can be taken in again. */
const setFile = 'bucktail-set.json';

const testFile = 'test.xml';

export interface QtiPackage {
	readonly files: ReadonlyMap<string, string>;
	/** How many tasks are in it. */
	readonly items: number;
	/** What the set has and the package cannot, a sentence each. */
	readonly left: readonly string[];
}

/** A set as a 1EdTech QTI 3.0 package: a test, an item and a drawing a task, and a manifest. */
export function qtiPackage(open: OpenSet): QtiPackage {
	const files = new Map<string, string>();
	const items: Item[] = [];
	const left: string[] = [];
	for (const own of open.tasks) {
		const { title, svg } = figureFile(own.task);
		const item = itemOf(own, { href: imageOf(`task-${own.place}`), title });
		if (item) {
			items.push(item);
			files.set(itemFile(item.id), item.xml);
			files.set(imageOf(item.id), svg);
		} else {
			left.push(`Task ${own.place}, ${own.task.number}, is left out: QTI has no way to mark it.`);
		}
	}
	files.set(testFile, testOf(open, items));
	files.set(setFile, `${JSON.stringify(open.set, null, '\t')}\n`);
	const manifest = new Map([['imsmanifest.xml', manifestOf(open, items)], ...files]);
	return { files: manifest, items: items.length, left: [...left, ...leftOf(open)] };
}

export function writeQti({ files }: Pick<QtiPackage, 'files'>): Uint8Array {
	return writeZip(files);
}

/** The set of a package that Bucktail made; never throws. */
export function readQti(bytes: Uint8Array): SetReading {
	const zip = readZip(bytes);
	if (!zip.ok) return zip;
	const file = zip.files.get(setFile);
	if (!file)
		return { ok: false, sentence: 'That package was not made by Bucktail: no set is in it.' };
	try {
		return readSet(JSON.parse(new TextDecoder().decode(file)));
	} catch {
		return { ok: false, sentence: 'The set in that package is damaged; export it again.' };
	}
}

function leftOf({ set, tasks }: OpenSet): string[] {
	const hasFields = tasks.some(({ question }) => !question);
	const rows: readonly (readonly [boolean, string])[] = [
		[
			hasFields,
			'Numbers are entered as decimals in the unit named: no fractions, millimetres, dash numbers or drill names.'
		],
		[hasFields, 'A later answer that follows from an earlier wrong one has no marks.'],
		[true, 'An answer has all its marks or none: marks of single steps are put together.'],
		[set.numbers === 'own', 'All students get the numbers of the set, none of their own.'],
		[set.order === 'mixed', 'The tasks stand in the order of the set for every student.'],
		[set.due !== null, 'The due date is not in it: set it where the package is used.'],
		[!set.help, 'That no help is allowed is not in it: set it where the package is used.'],
		[set.note + set.tolerance !== '', 'The notes on the set are not in it.']
	];
	return rows.flatMap(([applies, sentence]) => (applies ? sentence : []));
}

function itemFile(id: string): string {
	return `items/${id}.xml`;
}

function imageOf(id: string): string {
	return `images/${id}.svg`;
}

/** The drawing of a task as a file of its own, in black and grey. */
function figureFile({ family, method, drawn }: Task): { title: string; svg: string } {
	const say = (key: string, value: Value) => textAt(method, key, value);
	const drawing = family.figure(drawn.given, say);
	const svg = toSvg(drawing).replace(
		/^<svg ([^>]*)>/,
		`<svg xmlns="http://www.w3.org/2000/svg" $1><style>${figureStyle}</style>`
	);
	return { title: drawing.title, svg: xmlDocument(svg) };
}

function testOf({ set, hash }: OpenSet, items: readonly Item[]): string {
	const refs = items.map(({ id }) =>
		el('qti-assessment-item-ref', { identifier: id, href: itemFile(id) })
	);
	const section = el(
		'qti-assessment-section',
		{ identifier: 'tasks', title: set.title, visible: true },
		...refs
	);
	return xmlDocument(
		el(
			'qti-assessment-test',
			{ xmlns: itemNamespace, identifier: `set-${hash}`, title: set.title },
			el(
				'qti-test-part',
				{
					identifier: 'part',
					'navigation-mode': 'nonlinear',
					'submission-mode': 'simultaneous'
				},
				section
			)
		)
	);
}

function manifestOf({ hash }: OpenSet, items: readonly Item[]): string {
	const file = (href: string) => el('file', { href });
	const resource = (id: string, type: string, href: string, needs: readonly string[] = []) =>
		el(
			'resource',
			{ identifier: id, type, href },
			file(href),
			...needs.map((identifierref) => el('dependency', { identifierref }))
		);
	const each = items.flatMap(({ id }) => [
		resource(id, 'imsqti_item_xmlv3p0', itemFile(id), [`image-${id}`]),
		resource(`image-${id}`, 'webcontent', imageOf(id))
	]);
	const ids = items.map(({ id }) => id);
	return xmlDocument(
		el(
			'manifest',
			{ xmlns: manifestNamespace, identifier: `set-${words(hash)}-package` },
			el('metadata', {}, el('schema', {}, 'QTI Package'), el('schemaversion', {}, '3.0.0')),
			el('organizations'),
			el(
				'resources',
				{},
				resource('test', 'imsqti_test_xmlv3p0', testFile, ids),
				...each,
				resource('set', 'webcontent', setFile)
			)
		)
	);
}
